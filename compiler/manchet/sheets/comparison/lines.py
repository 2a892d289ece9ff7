"""A change as a line, in the house's words and units."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.comparison.compare import Comparison
from manchet.comparison.values import (
    AllergenChange,
    Change,
    CostChange,
    CountedChange,
    ExchangedFor,
    FlourChange,
    HeadChange,
    HeldBack,
    HoursChange,
    KeptChange,
    LiquidWarmth,
    LossChange,
    MadePieces,
    MadeWith,
    MakesChange,
    OptionalChange,
    ShareChange,
    StageCalled,
    StageComesOrGoes,
    StageShare,
    StepChange,
    StepMoved,
    TotalChange,
    UnknownAllergens,
    WeighedOtherwise,
)
from manchet.formula.model import Step
from manchet.formula.nouns import noun_for, singular
from manchet.sheets.comparison.allergen_words import allergen_line, unknown_line
from manchet.sheets.comparison.facet_words import facet_said, step_name, whole_step
from manchet.sheets.comparison.from_to import figures_line, from_to, percents, sided_line, words_line
from manchet.sheets.comparison.head_words import head_line
from manchet.sheets.comparison.view import ChangedLine
from manchet.sheets.comparison.weights_today import former_weight_today, weight_today
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.money import money_text
from manchet.sheets.parts.wording import single


def changed_lines(comparison: Comparison, m: Measures) -> tuple[ChangedLine, ...]:
    """One for each change, in their order."""
    return tuple(_line(change, comparison, m) for change in comparison.changes)


def _line(change: Change, comparison: Comparison, m: Measures) -> ChangedLine:
    say, words = m.words.say, m.words
    match change:
        case AllergenChange():
            return allergen_line(change, comparison.after, m)
        case UnknownAllergens():
            return unknown_line(change, m)
        case MakesChange():
            return _makes(change, m)
        case FlourChange(was, now):
            return figures_line(words["compared.flour"], m.flour(was), m.flour(now), m)
        case LossChange(what, was, now):
            lost, loses = (None if loss is None else m.percent(loss) for loss in (was, now))
            name = words["compared.dough_loss" if what == "dough loss" else "compared.bake_loss"]
            return sided_line(name, lost, loses, m)
        case ShareChange():
            return _share(change, comparison, m)
        case ExchangedFor():
            return _exchange(change, comparison, m)
        case StageShare():
            return _stage_share(change, m)
        case StageComesOrGoes():
            return _stage_alone(change, m)
        case TotalChange(total, was, now):
            name = words[f"compared.{total.replace(' ', '_')}"]
            return figures_line(name, *percents(was, now, m, worked_out=True), m)
        case OptionalChange(name, _, now):
            return words_line(say("compared.optional_now" if now else "compared.optional_no_longer", name))
        case CountedChange():
            return _counted(change, m)
        case KeptChange():
            return _kept(change, m)
        case WeighedOtherwise():
            return _weighed(change, comparison, m)
        case MadeWith(name):
            return words_line(say("compared.made_with", name))
        case CostChange(noun, was, now, currency):
            name = say("compared.cost_of", singular(noun)) if noun else words["compared.cost"]
            # A tenth of the smallest coin: that is a euro on a thousand loaves.
            cost, costs = (f"{money_text(amount, currency, 1)}{NBSP}{currency}" for amount in (was, now))
            return figures_line(name, cost, costs, m)
        case HoursChange(was, now):
            return figures_line(words["compared.hours"], _hours(was, m), _hours(now, m), m)
        case LiquidWarmth(stage, name, was, now):
            stood, stands = (None if at is None else m.degrees(single(at)) for at in (was, now))
            return sided_line(say("compared.in_stage", stage, say("compared.warm", name)), stood, stands, m)
        case HeldBack(stage, name, was, now):
            held, holds = (words["compared.all_of_it"] if share is None else m.percent(share) for share in (was, now))
            return figures_line(say("compared.in_stage", stage, say("compared.held_back", name)), held, holds, m)
        case StepChange():
            return _step(change, m)
        case StepMoved():
            return _moved(change, m)
        case StageCalled():
            return _called(change, m)
        case HeadChange():
            return head_line(change, m)


def _hours(seconds: Fraction, m: Measures) -> str:
    """To the minute."""
    from manchet.quantities.printing import round_to

    return m.hours(single(round_to(seconds / 60, 0) * 60))


# ---- how much -------------------------------------------------------------------------------------


def _makes(change: MakesChange, m: Measures) -> ChangedLine:
    was, now = change.before, change.after
    makes = m.words["compared.makes"]
    if was is None and now is not None:
        return words_line(f"{makes} {m.words.say('compared.new_pieces', _pieces(now, m))}")
    if now is None and was is not None:
        return words_line(m.words.say("compared.no_more_pieces", was.noun, _pieces(was, m)))
    assert was is not None and now is not None
    return figures_line(makes, _pieces(was, m), _pieces(now, m), m, one_unit=False)


def _pieces(made: MadePieces, m: Measures) -> str:
    if not made.noun:
        return m.words.say("compared.whole", m.mass(made.grams))
    number, noun = m.plain(single(made.number), 1), noun_for(made.number, made.noun)
    if not made.grams:
        return m.words.say("compared.number", number, noun)
    said = m.words.say("compared.pieces", number, noun, m.each(made.grams))
    return m.words.say("compared.in_stage", said, made.tin) if made.tin else said


def _share(change: ShareChange, comparison: Comparison, m: Measures) -> ChangedLine:
    was, now, work = change.before, change.after, comparison.after
    name = m.words.say("compared.in_stage", change.stage, change.name) if change.stage else change.name
    today = "" if change.stage or now is None else weight_today(change.key, now, work, m)
    if was is None and now is not None:
        said = _up_to(now, change.more_after, m)
        text = m.words.say("compared.new", name, said)
        return _with_today(ChangedLine(text, name, said, "", today), m)
    if now is None and was is not None:
        said = _up_to(was, change.more_before, m)
        gone = m.words.say("compared.gone", change.name, said)
        if change.stage:
            gone = m.words.say("compared.in_stage", change.stage, gone)
        return words_line(gone)
    assert was is not None and now is not None
    if change.more_before or change.more_after:
        return figures_line(name, _up_to(was, change.more_before, m), _up_to(now, change.more_after, m), m)
    figures = percents(was, now, m, worked_out=bool(change.stage))
    line = figures_line(name, *figures, m)
    if change.stage:
        return line
    return _with_today(line._replace(weight=today, was_weight=former_weight_today(change.key, was, work, m)), m)


def _up_to(share: Fraction, more: Fraction, m: Measures) -> str:
    """`65 %`, `65–69 %` where more may go in as the flour asks."""
    if not more:
        return m.percent(share)
    return m.words.say("units.range", m.percent(share).rpartition(NBSP)[0], m.percent(share + more))


def _with_today(line: ChangedLine, m: Measures) -> ChangedLine:
    """The same with what it weighs today behind it."""
    if not line.weight:
        return line
    grams = from_to(line.was_weight, line.weight, m, one_unit=False) if line.was_weight else line.weight
    return line._replace(text=m.words.say("compared.percent", line.text, m.words.say("compared.today", grams)))


def _exchange(change: ExchangedFor, comparison: Comparison, m: Measures) -> ChangedLine:
    say = m.words.say
    was, now = (m.percent(share) for share in (change.share_before, change.share_after))
    today = weight_today(change.key_after, change.share_after, comparison.after, m)
    if was == now:
        text = say("compared.exchanged", f"{change.after} {now}", change.before)
    else:
        text = say("compared.exchanged_other", f"{change.after} {now}", f"{change.before} {was}")
    return _with_today(ChangedLine(text, text, weight=today), m)


def _stage_share(change: StageShare, m: Measures) -> ChangedLine:
    of = m.words.say
    figures = percents(change.before, change.after, m, worked_out=True)
    pair = of("compared.of_all_flour", from_to(*figures, m))
    what = of("compared.with_share", change.stage)
    line = ChangedLine(f"{what} {pair}", what, of("compared.of_all_flour", figures[1]), figures[0])
    if change.prefermented is None:
        return line
    aside = of("compared.prefermented", from_to(*percents(*change.prefermented, m, worked_out=True), m))
    return line._replace(text=f"{line.text} ({aside})", aside=aside)


def _stage_alone(change: StageComesOrGoes, m: Measures) -> ChangedLine:
    share = change.after if change.before is None else change.before
    name = m.words.say("compared.stage_with", change.stage, m.worked_out(share)) if share else change.stage
    return words_line(m.words.say("compared.stage_new" if change.before is None else "compared.stage_gone", name))


def _counted(change: CountedChange, m: Measures) -> ChangedLine:
    """`Ebb rye 2 → 3 slices`"""
    was, now = (
        None if number is None else m.words.say(f"counted.{unit}", m.plain(single(number), 2))
        for number, unit in ((change.before, change.unit_before), (change.after, change.unit_after))
    )
    if now is None:
        return words_line(m.words.say("compared.gone", change.name, was or ""))
    if was is None:
        return words_line(m.words.say("compared.new", change.name, now))
    line = figures_line(change.name, was, now, m)
    if change.unit_before != change.unit_after or change.before is None or change.after is None:
        return line
    numbers = from_to(m.plain(single(change.before), 2), m.plain(single(change.after), 2), m)
    return line._replace(text=f"{change.name} {m.words.say(f'counted.{change.unit_after}', numbers)}")


def _kept(change: KeptChange, m: Measures) -> ChangedLine:
    name = m.words.say("compared.keeps", change.name) if change.name else m.words["compared.keep_thrown"]
    was, now = (_kept_how(how, grams, m) for how, grams in (change.before, change.after))
    return figures_line(m.words.say("compared.in_stage", change.stage, name), was, now, m)


def _kept_how(how: str, grams: Fraction | None, m: Measures) -> str:
    return m.words[f"compared.kept_{how or 'nothing'}"] if grams is None else m.mass(grams)


def _weighed(change: WeighedOtherwise, comparison: Comparison, m: Measures) -> ChangedLine:
    flour = comparison.after.batch.flour
    was, now = m.mass(change.before * flour), m.mass(change.after * flour)
    if was == now:
        return words_line(m.words.say("compared.goes_on", change.stage))
    line = figures_line(m.words.say("compared.weighed_in", change.stage), was, now, m)
    return line._replace(text=m.words.say("compared.today", line.text))


# ---- what is done ---------------------------------------------------------------------------------


def _step(change: StepChange, m: Measures) -> ChangedLine:
    say, stage = m.words.say, change.stage
    was, now = change.before, change.after
    if was is None and now is not None:
        return words_line(say("compared.in_stage", stage, say("compared.step_new", whole_step(now, m))))
    if now is None and was is not None:
        return words_line(say("compared.in_stage", stage, say("compared.step_gone", whole_step(was, m))))
    assert was is not None and now is not None
    name = say("compared.in_stage", stage, step_name(now, m, change.facets))
    told_old, told_new = (_facets(change.facets, step, m) for step in (was, now))
    if not told_old:
        return words_line(say("compared.now_also", name, told_new))
    if not told_new:
        return words_line(say("compared.now_not", name, told_old))
    return figures_line(name, told_old, told_new, m, one_unit=False)


def _facets(facets: Sequence[str], step: Step, m: Measures) -> str:
    return ", ".join(said for facet in facets if (said := facet_said(facet, step, m)))


def _moved(change: StepMoved, m: Measures) -> ChangedLine:
    say, name = m.words.say, step_name(change.after, m)
    if change.follows is None:
        said = say("compared.moved_first", name)
    else:
        said = say("compared.moved", name, step_name(change.follows, m))
    if change.facets:
        was, now = (_facets(change.facets, step, m) for step in (change.before, change.after))
        said = say("compared.moved_and", said, from_to(was, now, m, one_unit=False) if was and now else now or was)
    return words_line(say("compared.in_stage", change.stage, said))


def _called(change: StageCalled, m: Measures) -> ChangedLine:
    say = m.words.say
    if change.word_before == change.word_after:
        return words_line(say("compared.called", change.before, change.after))
    if change.before == change.after:
        return words_line(say("compared.word", change.after, change.word_after, change.word_before))
    return words_line(say("compared.called_word", change.before, change.after, change.word_after))
