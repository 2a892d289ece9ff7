"""A first formula to change: one that says what each line is for, and checks clean as it stands."""

from __future__ import annotations

from manchet.syntax.headings import headings

_STARTER = """\
# A formula says what is weighed, then what is done. Everything after a # is for people.
#   manchet check FILE      looks it over
#   manchet build FILE      writes the prep sheet and the timing card
# Change one line at a time, and check.

formula {name}
  # One sentence that a colleague would understand.
  about "A plain tin loaf with a poolish made the night before."
  # The kind of bread decides which figures are usual for it.
  kind tin loaf
  # How many, and what one weighs: as dough at the scale, or out of the oven (`800 g baked`).
  makes 8 loaves at 900 g dough
  # What sticks to bowls and bench, and what the oven takes.
  dough loss 2%
  bake loss 12%

  # All that is weighed for the bread, in per cent of all its flour. The flours make 100 %.
  overall
    white flour           85%
    whole wheat flour     15%
    water                 66%
    salt                   1.9%
    butter                 3%
    fresh yeast            1.2%

  # Made ahead. 25 % of all the flour goes into it; inside it, the flour is 100 % again.
  poolish with 25% of all flour
    white flour          100%
    water                100%
    fresh yeast            0.2%
    mix by hand 3 min to 22 C
    ripen covered 10-12 h at 20 C until "domed, just beginning to dimple"

  # The dough takes the poolish and whatever is left of everything above.
  # After the weighing come the steps, one a line, in the order they are done.
  dough
    poolish
    everything else
    hold back butter
    mix slow 4 min
    add butter
    mix fast 4 min to 25 C until "smooth, stretches to a thin window"
    ferment covered 75 min at 25 C with a fold after 40 min
    divide
    shape round
    rest covered 15 min
    shape long
    place in tin
    prove covered 50-60 min at 28 C until "a finger mark fills slowly"
    bake 12 min at 230 C, steam
    bake 22-26 min at 200 C to 96 C core, vent open
    turn out
    cool 2 h
"""


def starter(name: str) -> str:
    """The text of a file with one formula called `name` (a plain name, as `is_a_name` has it)."""
    return _STARTER.format(name=name)


def is_a_name(name: str) -> bool:
    """Whether a formula can be called this: something with a letter in it, on one line, with no comment sign or quote in it,
    which its heading gives back as it is."""
    if not any(letter.isalpha() for letter in name):
        return False
    if not name.isprintable() or set(name) & set('#"') or len(name) > 200:
        return False
    return [heading.name for heading in headings(f"formula {name}\n")] == [name]
