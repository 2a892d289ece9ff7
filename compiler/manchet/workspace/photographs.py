"""Whether the bytes of a PNG or a JPEG are one from end to end, as far as it can be told without drawing it.

PNG: W3C Recommendation, second edition. JPEG: ITU-T T.81, annex B.
"""

from __future__ import annotations

MOST_POINTS = 40_000_000
"""More than any page can use."""
_DEPTHS = {0: (1, 2, 4, 8, 16), 2: (8, 16), 3: (1, 2, 4, 8), 4: (8, 16), 6: (8, 16)}
"""Bits a sample may have, by the kind of colour."""
_SAMPLES = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}
_FRAMES = frozenset({*range(0xC0, 0xD0)} - {0xC4, 0xC8, 0xCC})
"""Markers of a frame, which says how wide and high it is."""


def is_whole_png(data: bytes) -> bool:
    """Every chunk with its sum, a possible header, and as many points as that says."""
    import zlib

    at, chunks = 8, []
    while at + 12 <= len(data):
        end = at + 8 + int.from_bytes(data[at : at + 4], "big")
        name, body = data[at + 4 : at + 8], data[at + 8 : end]
        if end + 4 > len(data) or zlib.crc32(name + body) != int.from_bytes(data[end : end + 4], "big"):
            return False
        chunks.append((name, body))
        at = end + 4
        if name == b"IEND":
            break
    if len(chunks) < 3 or chunks[0][0] != b"IHDR" or len(chunks[0][1]) != 13 or chunks[-1][0] != b"IEND":
        return False
    head = chunks[0][1]
    wide, high = int.from_bytes(head[:4], "big"), int.from_bytes(head[4:8], "big")
    depth, colour, packing, sieve, laced = head[8:]
    known = depth in _DEPTHS.get(colour, ()) and packing == sieve == 0 and laced in (0, 1)
    if (
        not known
        or not 0 < wide * high <= MOST_POINTS
        or (colour == 3 and not any(name == b"PLTE" for name, _ in chunks))
    ):
        return False
    most = high * (1 + (wide * depth * _SAMPLES[colour] + 7) // 8)
    return _unpacks(b"".join(body for name, body in chunks if name == b"IDAT"), most, bool(laced))


def _unpacks(packed: bytes, most: int, laced: bool) -> bool:
    """Whether it unpacks to that many bytes; laced rows have a few more for their seven passes."""
    import zlib

    stream, there = zlib.decompressobj(), 0
    try:
        while packed and not stream.eof and there <= 2 * most + 64:
            there += len(stream.decompress(packed, 1 << 20))
            packed = stream.unconsumed_tail
    except zlib.error:
        return False
    return stream.eof and (there >= most if laced else there == most)


def is_whole_jpeg(data: bytes) -> bool:
    """Segments one after another, a frame of some size before the first scan, and an end."""
    data = data.rstrip(b"\0")
    at, framed = 2, False
    while at + 4 <= len(data) and data[at] == 0xFF:
        marker, length = data[at + 1], int.from_bytes(data[at + 2 : at + 4], "big")
        if marker == 0xFF:  # what fills up may stand before a marker
            at += 1
            continue
        if marker < 0xC0 or length < 2 or at + 2 + length > len(data):
            return False
        if marker in _FRAMES:
            high, wide = int.from_bytes(data[at + 5 : at + 7], "big"), int.from_bytes(data[at + 7 : at + 9], "big")
            framed = length >= 11 and 0 < wide * high <= MOST_POINTS and data[at + 9] in (1, 3, 4)
        if marker == 0xDA:
            return framed and len(data) > at + 2 + length + 2 and data.endswith(b"\xff\xd9")
        at += 2 + length
    return False
