"""Asks the keyring of its own login, in a process of its own: the keyring library chooses once per process.

Usage: ask.py QUESTIONS, a JSON list of [verb, name] or [verb, name, secret]; prints a JSON list of outcomes.
"""

from __future__ import annotations

import json
import sys

from hearthkey.adapters.vault_keyring import KeyringVault
from hearthkey.core.errors import Unavailable
from hearthkey.core.secret import Secret


def outcome(vault: KeyringVault, verb: str, name: str, *secret: str) -> dict[str, object]:
    """Ask one question and tell what came of it."""
    try:
        if verb == "put":
            vault.put(name, Secret(secret[0]))
        elif verb == "delete":
            vault.delete(name)
        else:
            found = vault.get(name)
            return {"found": None if found is None else found.reveal()}
    except Unavailable as error:
        return {"unavailable": error.code, "facts": error.facts}
    return {"done": verb}


def main() -> None:
    """Answer all questions in turn."""
    vault = KeyringVault()
    json.dump([outcome(vault, *question) for question in json.loads(sys.argv[1])], sys.stdout)


if __name__ == "__main__":
    main()
