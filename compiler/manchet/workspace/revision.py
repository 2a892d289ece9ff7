"""The whole bakery as it was at a revision: larder, kitchens and shared stages of then, with three calls of git and no checkout."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.records import NamedTuple
from manchet.source.files import LARGEST
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.trouble import Unknown
from manchet.workspace.versions import git, git_bytes, in_checkout

LINK = "120000"
STAGED = "what is staged"


class Revision(NamedTuple):
    """`name` is the short commit."""

    name: str
    bakery: OpenBakery


def bakery_at(root: str, prefix: str, revision: str) -> Revision:
    """The bakery in the folder `root` as it was then; `prefix` stands before its paths as they are shown.

    Raises `Unknown` where there is no git, or no such revision. However many files there are, git is asked three times.
    """
    if not in_checkout(root):
        raise Unknown(
            f"{revision} cannot be looked up: this folder is in no git checkout", "commit the bakery once with git"
        )
    name = commit_of(root, revision)
    if not name:
        raise Unknown(f"git knows no revision {revision}", "name a commit, a tag or a branch, as in HEAD~2")
    return Revision(name, _bakery_of(root, prefix, name, revision))


def bakery_staged(root: str, prefix: str) -> OpenBakery:
    """The same as it would be committed now. Raises `Unknown` where git cannot say, as in a merge that is not joined."""
    tree = git(root, "write-tree")
    if tree is None:
        raise Unknown("git cannot say what is to be committed", "`git status` says why")
    return _bakery_of(root, prefix, tree.strip(), STAGED)


def _bakery_of(root: str, prefix: str, tree: str, called: str) -> OpenBakery:
    """The bakery in a commit or a tree of git."""
    listed = git_bytes(
        root, b"", "ls-tree", "-r", "-z", "--format=%(objectmode) %(objectname) %(objectsize)%x09%(path)", tree
    )
    if listed is None:
        raise Unknown(f"git cannot list {called}", "`git ls-tree` says why")
    files = [one for one in _bake_files(listed) if one.size <= LARGEST]
    asked = "".join(f"{one.blob}\n" for one in files).encode()
    contents = git_bytes(root, asked, "cat-file", "--batch") if files else b""
    if contents is None:
        raise Unknown(f"git cannot read the files of {called}", "`git fsck` says why")
    raws = [Raw(prefix + one.path, data) for one, data in zip(files, _contents(contents), strict=True)]
    return OpenBakery(prefix=prefix, files=raws)


def commit_of(root: str, revision: str) -> str:
    """The short commit that a word names; "" where there is no git, or it names none."""
    if not in_checkout(root):
        return ""
    commit = git(root, "rev-parse", "--verify", "--quiet", "--short", "--end-of-options", f"{revision}^{{commit}}")
    return (commit or "").strip()


class _Listed(NamedTuple):
    blob: str
    size: int
    path: str


def _bake_files(listed: bytes) -> Iterator[_Listed]:
    """The files of a bakery among those that git lists: no links, and none in a hidden folder."""
    for entry in listed.split(b"\0"):
        head, _, path = entry.partition(b"\t")
        words = head.split()
        name = path.decode("utf-8", "surrogateescape")
        hidden = any(part.startswith(".") for part in name.split("/"))
        if (
            len(words) == 3
            and words[0].decode() != LINK
            and name.endswith(".bake")
            and not hidden
            and words[2].isdigit()
        ):
            yield _Listed(words[1].decode(), int(words[2]), name)


def _contents(batch: bytes) -> Iterator[bytes]:
    """What `cat-file --batch` wrote: a head with the length, the bytes, a newline, one after another."""
    at = 0
    while at < len(batch):
        end = batch.index(b"\n", at)
        size = int(batch[at:end].split()[-1])
        yield batch[end + 1 : end + 1 + size]
        at = end + 2 + size
