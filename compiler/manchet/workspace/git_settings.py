"""What a clone's git has to be told once, so that it shows changes of formulas as a baker reads them and merges them well.

Git takes no commands from a repository, and rightly: whoever clones one would run them unseen. So each clone is told by hand.
The settings are git's own (gitattributes(5): "Defining an external diff driver", "Performing text diffs of binary files",
"Defining a custom hunk-header", "Defining a custom merge driver"; git-difftool(1)).
"""

from __future__ import annotations

from collections.abc import Sequence

from manchet.records import NamedTuple
from manchet.workspace.trouble import Blocked, Unknown
from manchet.workspace.versions import git, in_checkout

ATTRIBUTES = "*.bake diff=bake merge=bake text eol=lf"
"""The line that `.gitattributes` wants: it is committed, and holds for every clone."""


class GitSetting(NamedTuple):
    """`does` is what comes of it, in a few words."""

    key: str
    value: str
    does: str


def git_settings(command: str = "manchet") -> tuple[GitSetting, ...]:
    """What to set; `command` is what git's shell finds the command by, a name or a whole path."""
    return tuple(one._replace(value=one.value.replace("manchet ", f"{command} ", 1)) for one in SETTINGS)


SETTINGS = (
    GitSetting("diff.bake.xfuncname", "^( {0,2}[a-z].*)$", "a changed line is shown under its stage"),
    GitSetting("diff.bake.textconv", "manchet tidy --stdout", "git diff shows no change of columns alone"),
    GitSetting("merge.bake.name", "bread formulas in normal form, then line by line", "what git calls the next"),
    GitSetting("merge.bake.driver", "manchet merge %O %A %B %P", "columns set anew meet no conflict"),
    GitSetting(
        "difftool.bake.cmd",
        'manchet compare --git "$MERGED" "$LOCAL" "$REMOTE"',
        "git difftool -t bake says changes in baker's terms",
    ),
)


class GitState(NamedTuple):
    """Which settings a clone has as they should be, and whether `.gitattributes` sends `.bake` files to them."""

    has: frozenset[str]
    """Keys."""
    attributes: bool


def git_state(folder: str, settings: Sequence[GitSetting] = SETTINGS) -> GitState:
    """Raises `Unknown` where the folder is in no git checkout, or there is no git."""
    if not in_checkout(folder):
        raise Unknown("this folder is in no git checkout", "`git init` makes it one")
    listed = git(folder, "config", "--null", "--list", "--local")
    if listed is None:
        raise Unknown("git does not say how this clone is set up", "`git config --list --local` says why")
    # git gives names of keys in small letters, all but the part in the middle
    told = dict(one.partition("\n")[::2] for one in listed.split("\0") if one)
    has = frozenset(one.key for one in settings if told.get(one.key.lower()) == one.value)
    asked = git(folder, "check-attr", "-z", "diff", "merge", "--", "a.bake") or ""
    values = asked.split("\0")[2::3]
    return GitState(has, values == ["bake", "bake"])


def write_git_settings(folder: str, settings: Sequence[GitSetting]) -> None:
    """Raises `Blocked` where git will not."""
    for one in settings:
        if git(folder, "config", "--local", one.key, one.value) is None:
            raise Blocked(f"git would not set {one.key}", f"`git config {one.key} '{one.value}'` says why")
