"""Strict reading and writing of the little DER that key files and containers are made of.

ITU-T X.690 section 10: definite lengths in their shortest form, low tag numbers. Every length is
checked against what is really there, and nesting is bounded, so hostile input costs nothing.
"""

from __future__ import annotations

INTEGER, OCTET_STRING, NULL, OBJECT_ID = 0x02, 0x04, 0x05, 0x06
BMP_STRING, SEQUENCE, SET = 0x1E, 0x30, 0x31

DEEPEST = 16
"""Levels. A PKCS#12 container needs nine."""


class Malformed(ValueError):
    """The bytes are not the DER that was expected; whoever called turns it into a `Refused`."""


def implicit(number: int) -> int:
    """The tag of ``[number] IMPLICIT`` over a primitive type."""
    return 0x80 | number


def explicit(number: int) -> int:
    """The tag of ``[number] EXPLICIT``."""
    return 0xA0 | number


class Reader:
    """Walks over the elements in some bytes, one after the other.

    Args:
        data: complete content; whatever is left over is an error, see `end`.
        depth: how many elements surround the content.
    """

    def __init__(self, data: bytes, depth: int = 0) -> None:
        if depth > DEEPEST:
            raise Malformed("nested too deeply")
        self._data = data
        self._place = 0
        self.depth = depth

    def more(self) -> bool:
        """Whether another element follows."""
        return self._place < len(self._data)

    def peek(self) -> int:
        """The tag of the next element.

        Raises:
            Malformed: nothing follows.
        """
        if not self.more():
            raise Malformed("an element is missing")
        return self._data[self._place]

    def take(self, tag: int) -> bytes:
        """Take the next element, which must have that tag, and return its content.

        Raises:
            Malformed: another tag, or a length that is not DER or reaches beyond the end.
        """
        if self.peek() != tag:
            raise Malformed(f"tag {self.peek():#04x} where {tag:#04x} belongs")
        start, end = self._bounds()
        self._place = end
        return self._data[start:end]

    def take_whole(self) -> bytes:
        """Take the next element, whatever it is, with its tag and length.

        Raises:
            Malformed: as `take`.
        """
        first, (_, end) = self._place, self._bounds()
        self._place = end
        return self._data[first:end]

    def inside(self, tag: int) -> Reader:
        """Take the next element and return a reader of its content.

        Raises:
            Malformed: as `take`, and nesting beyond `DEEPEST`.
        """
        return Reader(self.take(tag), self.depth + 1)

    def end(self) -> None:
        """Insist that nothing follows.

        Raises:
            Malformed: something does.
        """
        if self.more():
            raise Malformed("something follows where nothing belongs")

    def integer(self) -> int:
        """Take an INTEGER that is not negative.

        Raises:
            Malformed: no INTEGER, not in its shortest form, or negative.
        """
        body = self.take(INTEGER)
        padded = len(body) > 1 and body[0] == 0 and body[1] < 0x80
        if not body or padded or body[0] >= 0x80:
            raise Malformed("no whole number in its shortest form")
        return int.from_bytes(body, "big")

    def object_id(self) -> str:
        """Take an OBJECT IDENTIFIER and return it dotted (ITU-T X.690 section 8.19).

        Raises:
            Malformed: no OBJECT IDENTIFIER, or not in its shortest form.
        """
        body = self.take(OBJECT_ID)
        if not body or body[-1] & 0x80 or len(body) > 64:
            raise Malformed("no object identifier")
        numbers, value = [], 0
        for place, octet in enumerate(body):
            if octet == 0x80 and (place == 0 or not body[place - 1] & 0x80):
                raise Malformed("an object identifier that is not in its shortest form")
            value = value << 7 | octet & 0x7F
            if not octet & 0x80:
                numbers.append(value)
                value = 0
        first = min(numbers[0] // 40, 2)
        return ".".join(map(str, [first, numbers[0] - 40 * first, *numbers[1:]]))

    def _bounds(self) -> tuple[int, int]:
        """Where the content of the next element starts and ends."""
        data, place = self._data, self._place
        if place + 2 > len(data):
            raise Malformed("cut off")
        if data[place] & 0x1F == 0x1F:
            raise Malformed("a tag number above 30")
        length, start = data[place + 1], place + 2
        if length >= 0x80:
            octets = length & 0x7F
            if not 1 <= octets <= 4 or start + octets > len(data):
                raise Malformed("a length that is not definite, too long, or cut off")
            length, start = int.from_bytes(data[start : start + octets], "big"), start + octets
            if length < 0x80 or length.bit_length() <= 8 * (octets - 1):
                raise Malformed("a length that is not in its shortest form")
        if start + length > len(data):
            raise Malformed("a length beyond the end")
        return start, start + length


def element(tag: int, *parts: bytes) -> bytes:
    """Write one element around its parts."""
    body = b"".join(parts)
    if len(body) < 0x80:
        return bytes((tag, len(body))) + body
    length = len(body).to_bytes((len(body).bit_length() + 7) // 8, "big")
    return bytes((tag, 0x80 | len(length))) + length + body


def integer(value: int) -> bytes:
    """Write an INTEGER that is not negative."""
    return element(INTEGER, value.to_bytes(value.bit_length() // 8 + 1, "big"))


def object_id(dotted: str) -> bytes:
    """Write an OBJECT IDENTIFIER (ITU-T X.690 section 8.19)."""
    first, second, *rest = map(int, dotted.split("."))
    body = bytearray()
    for number in (40 * first + second, *rest):
        groups = [number & 0x7F]
        while number := number >> 7:
            groups.append(0x80 | number & 0x7F)
        body.extend(reversed(groups))
    return element(OBJECT_ID, bytes(body))


NULL_ELEMENT = element(NULL)
