"""The facts of a recipe as a YAML document: what a formula says, one mapping or list item a fact, steps as their words."""

from __future__ import annotations

from generate import Recipe, RecipeLine, percent


def yaml_of(recipe: Recipe) -> str:
    lines = [f"formula: {recipe.name}"]
    for said in recipe.head:
        key, value = _split(said)
        lines.append(f"{key}: {value}")
    lines.append("overall:")
    lines += [f"  {line.name}: {percent(line.share)}" for line in recipe.overall]
    lines.append("stages:")
    for stage in recipe.stages:
        lines.append(f"  - kind: {stage.word}")
        lines.append(f"    name: {stage.name_used}")
        if stage.flour is not None:
            lines.append(f"    share: {percent(stage.flour)}")
        lines.append("    materials:")
        lines += [_material(line, stage.flour or stage.lines[0].share) for line in stage.lines]
        lines.append("    steps:")
        lines += [f"      - {_quoted(step)}" for step in stage.steps]
    lines.append("dough:")
    lines.append("  materials:")
    lines += [f"    - {stage.name_used}" for stage in recipe.stages] + ["    - everything else"]
    lines.append("  steps:")
    lines += [f"    - {_quoted(step)}" for step in recipe.steps]
    return "\n".join(lines) + "\n"


def _material(line: RecipeLine, basis: object) -> str:
    amount = percent(line.share / basis)  # type: ignore[operator]
    if not line.booking:
        return f"      {line.name}: {amount}"
    return f"      {line.name}: {{amount: {amount}, booking: {line.booking}}}"


def _split(said: str) -> tuple[str, str]:
    for key in ("about", "kind", "makes", "dough loss", "bake loss"):
        if said.startswith(key):
            return key, said.removeprefix(key).strip()
    raise ValueError(said)


def _quoted(step: str) -> str:
    return "'" + step.replace("'", "''") + "'"
