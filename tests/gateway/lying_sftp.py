"""Stands between a client and the real sftp-server, and lies (draft-ietf-secsh-filexfer-02; a program, not a module).

    lying_sftp.py MODE SFTP-SERVER

small, huge     files are said to have 1 octet, or 2**62
late            all times are an hour ago
endless         no file ever ends
longer          what is read has more octets than were asked for
mute            after 12 answers nothing is said any more
stranger        after 12 answers they are for questions that nobody asked
rubbish         after 12 answers they are no answers
overlong        after 12 answers one claims to be 4 GiB long
gone            after 12 answers it ends
"""

from __future__ import annotations

import struct
import subprocess
import sys
import threading
from typing import IO

READ, STATUS, DATA, ATTRS = 5, 101, 103, 105
EOF = 1
HAS_SIZE = 1
HOUR = 3600


def number(data: bytes) -> int:
    """A number of 32 bits."""
    return int(struct.unpack(">I", data[:4])[0])


def packet(pipe: IO[bytes]) -> bytes:
    """The next packet, empty after the last."""
    head = pipe.read(4)
    return pipe.read(number(head)) if len(head) == 4 else b""


def sent(pipe: IO[bytes], told: bytes) -> None:
    """Send a packet."""
    pipe.write(struct.pack(">I", len(told)) + told)
    pipe.flush()


def bent(mode: str, answer: bytes, count: int, asked: int) -> bytes:
    """An answer as the mode tells it.

    Args:
        count: the how-manieth it is.
        asked: how many octets its question asked for.
    """
    kind, identity = answer[:1], answer[1:5]
    if mode in {"small", "huge"} and kind[0] == ATTRS and number(answer[5:]) & HAS_SIZE:
        return answer[:9] + struct.pack(">Q", 1 if mode == "small" else 1 << 62) + answer[17:]
    if mode == "late" and kind[0] == ATTRS:  # flags, size, two owners, permissions, two times
        return answer[:29] + struct.pack(">II", number(answer[29:]) - HOUR, number(answer[33:]) - HOUR) + answer[37:]
    ended = kind[0] == STATUS and number(answer[5:]) == EOF and asked
    if (mode == "endless" and ended) or (mode == "longer" and kind[0] == DATA):
        more = asked + (mode == "longer")
        return bytes([DATA]) + identity + struct.pack(">I", more) + b"z" * more
    if mode == "stranger" and count > 12:
        return kind + b"\xff\xff\xff\xff" + answer[5:]
    if mode == "rubbish" and count > 12:
        return b"\x65" + b"\x1b[2J\x07" * 20
    return answer


def main(mode: str, program: str) -> None:
    """Pass questions on as they are, and answers as the mode tells them."""
    server = subprocess.Popen([program], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
    assert server.stdin is not None
    assert server.stdout is not None
    into = server.stdin
    asked: dict[bytes, int] = {}

    def ask() -> None:
        while question := packet(sys.stdin.buffer):
            if question[0] == READ:
                asked[question[1:5]] = number(question[-4:])
            sent(into, question)
        into.close()

    threading.Thread(target=ask, daemon=True).start()
    count = 0
    while answer := packet(server.stdout):
        count += 1
        if mode == "gone" and count > 12:
            break
        if mode == "mute" and count > 12:
            continue
        if mode == "overlong" and count > 12:
            sys.stdout.buffer.write(b"\xff\xff\xff\xff")
        sent(sys.stdout.buffer, bent(mode, answer, count, asked.pop(answer[1:5], 0)))
    server.kill()


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2])
