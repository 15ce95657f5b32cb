"""What is said of taking a change back, and of doing it again."""

from __future__ import annotations

from collections.abc import Mapping

from hearthkey.core.phrases import Phrase
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.settling import whom
from hearthkey.core.undo import Deed, Final, Kind, kind_of

_UNDO: dict[Kind | Final, str] = {
    Kind.STOP: "Undo: stop {whom}",
    Kind.LET_IN: "Undo: let {whom} back in",
    Kind.SETTLE: "Undo: the household’s settings",
    Kind.TARGET: "Undo: where the gateway is",
    Kind.OPTIONS: "Undo: the choices for the gateway’s files",
    Kind.TEMPLATE_KEPT: "Undo: keep the template {name}",
    Kind.TEMPLATE_FORGOTTEN: "Undo: forget the template {name}",
    Kind.LANGUAGE: "Undo: the language of {name}",
    Kind.CALL: "Undo: whom to call",
    Kind.VISIT_PLANNED: "Undo: a visit to {name}",
    Kind.VISIT_CALLED_OFF: "Undo: call off a visit to {name}",
    Kind.GONE: "Undo: a copy of {whom} is gone",
    Kind.NOT_GONE: "Undo: a copy of {whom} is not gone",
    Kind.NAMED: "Undo: name {whom}",
    Kind.CHOICES: "Undo: the choices for configuration profiles",
    Final.ENROLLED: "Undo: a pass for {whom}",
    Final.RENEWED: "Undo: renew {whom}",
    Final.REPLACED: "Undo: replace a device by {whom}",
    Final.TAKEN_BACK: "Undo: take the renewal of {whom} back",
    Final.SUPERSEDED: "Undo: let the old pass of {whom} go",
    Final.SUCCESSION: "Undo: a step to the next CA",
    Final.HANDED_OVER: "Undo: hand over {whom}",
    Final.REVOKED: "Undo: revoke {whom}",
    Final.PROVED: "Undo: a proof of {whom}",
    Final.DELETED: "Undo: delete a copy of {whom}",
}

_REDO: dict[Kind, str] = {
    Kind.STOP: "Redo: stop {whom}",
    Kind.LET_IN: "Redo: let {whom} back in",
    Kind.SETTLE: "Redo: the household’s settings",
    Kind.TARGET: "Redo: where the gateway is",
    Kind.OPTIONS: "Redo: the choices for the gateway’s files",
    Kind.TEMPLATE_KEPT: "Redo: keep the template {name}",
    Kind.TEMPLATE_FORGOTTEN: "Redo: forget the template {name}",
    Kind.LANGUAGE: "Redo: the language of {name}",
    Kind.CALL: "Redo: whom to call",
    Kind.VISIT_PLANNED: "Redo: a visit to {name}",
    Kind.VISIT_CALLED_OFF: "Redo: call off a visit to {name}",
    Kind.GONE: "Redo: a copy of {whom} is gone",
    Kind.NOT_GONE: "Redo: a copy of {whom} is not gone",
    Kind.NAMED: "Redo: name {whom}",
    Kind.CHOICES: "Redo: the choices for configuration profiles",
}

_UNDONE: dict[Kind, str] = {
    Kind.STOP: "The stop of {whom} was taken back with revocation list {number}, before it was in force.",
    Kind.LET_IN: "Letting {whom} back in was taken back with revocation list {number}, before it was in force.",
    Kind.SETTLE: "The change of the household’s settings was taken back.",
    Kind.TARGET: "The change of where the gateway is was taken back.",
    Kind.OPTIONS: "The change of the choices for the gateway’s files was taken back.",
    Kind.TEMPLATE_KEPT: "Keeping the template {name} was taken back.",
    Kind.TEMPLATE_FORGOTTEN: "Forgetting the template {name} was taken back.",
    Kind.LANGUAGE: "The choice of a language for {name} was taken back.",
    Kind.CALL: "The change of whom to call was taken back.",
    Kind.VISIT_PLANNED: "The visit to {name} was taken back.",
    Kind.VISIT_CALLED_OFF: "Calling off the visit to {name} was taken back.",
    Kind.GONE: "That a copy of {whom} is gone was taken back.",
    Kind.NOT_GONE: "That a copy of {whom} is not gone was taken back.",
    Kind.NAMED: "Naming {whom} was taken back. Nobody has said whose it is.",
    Kind.CHOICES: "The change of the choices for configuration profiles was taken back.",
}

_REDONE: dict[Kind, str] = {
    Kind.STOP: "The stop of {whom} was done again after all, with revocation list {number}.",
    Kind.LET_IN: "Letting {whom} back in was done again after all, with revocation list {number}.",
    Kind.SETTLE: "The change of the household’s settings was made again after all.",
    Kind.TARGET: "The change of where the gateway is was made again after all.",
    Kind.OPTIONS: "The change of the choices for the gateway’s files was made again after all.",
    Kind.TEMPLATE_KEPT: "The template {name} was kept again after all.",
    Kind.TEMPLATE_FORGOTTEN: "The template {name} was forgotten again after all.",
    Kind.LANGUAGE: "The language for {name} was chosen again after all.",
    Kind.CALL: "The change of whom to call was made again after all.",
    Kind.VISIT_PLANNED: "The visit to {name} was planned again after all.",
    Kind.VISIT_CALLED_OFF: "The visit to {name} was called off again after all.",
    Kind.GONE: "That a copy of {whom} is gone was said again after all.",
    Kind.NOT_GONE: "That a copy of {whom} is not gone was said again after all.",
    Kind.NAMED: "{whom} was named again after all.",
    Kind.CHOICES: "The change of the choices for configuration profiles was made again after all.",
}


def undo(deed: Deed) -> Sentence:
    """The words of the menu for taking a change back."""
    return Sentence(_UNDO[deed.final or _kind(deed)], _facts(deed))


def redo(deed: Deed) -> Sentence:
    """The words of the menu for doing a change again.

    Args:
        deed: the change that took it back.
    """
    return Sentence(_REDO[_kind(_forth(deed))], _facts(deed))


def undone(deed: Deed, number: int = 0) -> Phrase:
    """What the diary says of a change that was taken back; `number` is that of the list that says so."""
    return Phrase(_UNDONE[_kind(deed)], {**_facts(deed), "number": number})


def redone(deed: Deed, number: int = 0) -> Phrase:
    """What the diary says of a change that was done again.

    Args:
        deed: the change that had taken it back.
        number: of the list that says so.
    """
    return Phrase(_REDONE[_kind(_forth(deed))], {**_facts(deed), "number": number})


def _forth(deed: Deed) -> Deed:
    return deed.turned_round(deed.marks)


def _kind(deed: Deed) -> Kind:
    return kind_of(deed.before, deed.after) or Kind.SETTLE


def _facts(deed: Deed) -> Mapping[str, object]:
    names = (*deed.after.templates, *deed.before.templates, *deed.titles)
    return {"whom": whom(deed.titles) if deed.titles else "", "name": names[0] if names else ""}
