"""Print a script that lets your shell complete commands, options and file names.

The script knows the commands and options of this version; write it again after an upgrade.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping
from importlib import import_module

from manchet.cli.arguments import one_of, parser_for
from manchet.cli.main import COMMANDS
from manchet.cli.status import FINE
from manchet.records import NamedTuple
from manchet.workspace.trouble import Unknown

EXAMPLES = (
    "manchet completion bash > ~/.local/share/bash-completion/completions/manchet",
    "manchet completion zsh > ~/.zfunc/_manchet",
    "manchet completion fish > ~/.config/fish/completions/manchet.fish",
)
SHELLS = ("bash", "zsh", "fish")


class Option(NamedTuple):
    """An option with what can follow it: words, anything (`takes` and no words), or nothing."""

    name: str
    help: str
    takes: bool
    words: tuple[str, ...]


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("shell", nargs="?", type=one_of(*SHELLS), metavar="SHELL", help="bash, zsh or fish")


def run(options: argparse.Namespace) -> int:
    if not options.shell:
        raise Unknown("which shell is it for?", "manchet completion bash, zsh or fish")
    print(script(options.shell, known_options()), end="")
    return FINE


def known_options() -> dict[str, tuple[Option, ...]]:
    """Every command's long options, from the parsers themselves."""
    return {command: _options(command) for command in COMMANDS}


def script(shell: str, known: Mapping[str, tuple[Option, ...]]) -> str:
    writers: dict[str, Callable[[Mapping[str, tuple[Option, ...]]], str]] = {"bash": _bash, "zsh": _zsh, "fish": _fish}
    return writers[shell](known)


def _options(command: str) -> tuple[Option, ...]:
    parser = parser_for(command, import_module(f"manchet.cli.{command}"))
    return tuple(
        Option(
            name, (action.help or "").replace("'", "’"), action.nargs != 0, tuple(getattr(action.type, "choices", ()))
        )
        for name, action in parser.options_of().items()
        if name.startswith("--")
    )


def _bash(known: Mapping[str, tuple[Option, ...]]) -> str:
    cases = []
    for command, options in known.items():
        for option in options:
            if option.words:
                words = " ".join(option.words)
                cases.append(f'    {command}:{option.name}) COMPREPLY=($(compgen -W "{words}" -- "$word")); return ;;')
        names = " ".join(option.name for option in options)
        first = " ".join(SHELLS) if command == "completion" else ""
        cases.append(
            f'    {command}:*) if [[ $word == -* ]]; then COMPREPLY=($(compgen -W "{names}" -- "$word"));'
            f' else COMPREPLY=($(compgen -W "{first}" -- "$word") $(compgen -f -- "$word")); fi ;;'
        )
    body = "\n".join(cases)
    return f"""\
# Completion of manchet for bash.
_manchet() {{
  local word=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD-1]}}
  if [[ $COMP_CWORD -eq 1 ]]; then
    COMPREPLY=($(compgen -W "{" ".join(known)} --help --version" -- "$word"))
    return
  fi
  case ${{COMP_WORDS[1]}}:$before in
{body}
  esac
}}
complete -o filenames -F _manchet manchet
"""


def _zsh(known: Mapping[str, tuple[Option, ...]]) -> str:
    commands = "\n".join(f"    '{name}:{does}'" for name, does in COMMANDS.items())
    cases = []
    for command, options in known.items():
        specs = []
        for option in options:
            help = option.help.replace("[", "(").replace("]", ")").replace(":", "\\:")
            value = f":value:({' '.join(option.words)})" if option.words else ":value:_files" if option.takes else ""
            specs.append(f"      '{option.name}[{help}]{value}'")
        rest = f"'*:shell:({' '.join(SHELLS)})'" if command == "completion" else "'*:file:_files'"
        cases.append(f"    {command}) _arguments \\\n" + " \\\n".join([*specs, f"      {rest}"]) + " ;;")
    body = "\n".join(cases)
    return f"""\
#compdef manchet
# Completion of manchet for zsh.
_manchet() {{
  local -a commands=(
{commands}
  )
  if (( CURRENT == 2 )); then
    _describe command commands
    return
  fi
  local command=$words[2]
  shift words
  (( CURRENT-- ))
  case $command in
{body}
  esac
}}
_manchet "$@"
"""


def _fish(known: Mapping[str, tuple[Option, ...]]) -> str:
    lines = ["# Completion of manchet for fish."]
    for name, does in COMMANDS.items():
        lines.append(f"complete -c manchet -n __fish_use_subcommand -a {name} -d '{does}'")
    for command, options in known.items():
        seen = f"-n '__fish_seen_subcommand_from {command}'"
        for option in options:
            value = f" -x -a '{' '.join(option.words)}'" if option.words else " -r" if option.takes else ""
            lines.append(f"complete -c manchet {seen} -l {option.name[2:]}{value} -d '{option.help}'")
    lines.append(f"complete -c manchet -n '__fish_seen_subcommand_from completion' -x -a '{' '.join(SHELLS)}'")
    return "\n".join(lines) + "\n"
