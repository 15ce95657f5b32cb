"""What the pictures show: each scene brings the window into a state."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from hearthkey.core.passes import Pass
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.gateway_place import GatewayPlacePage
from hearthkey.ui.drawer.proof_steps import Stage
from hearthkey.ui.gallery import (
    adopt_states,
    copies_states,
    deputy_states,
    desk_states,
    diary_states,
    form_states,
    gateway_states,
    kinds_states,
    many_states,
    moving_states,
    pickup_states,
    proof_states,
    reach_states,
    renewal_states,
    restore_states,
    sealed_states,
    succession_states,
    template_states,
)
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL, Look
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.window import Window


@dataclass(frozen=True)
class Scene:
    """One state of the window.

    Args:
        name: goes into the picture's file name.
        begin: brings the window there; what it asks of the household is waited for.
        looks: in which looks it is drawn.
    """

    name: str
    begin: Callable[[Window], object]
    looks: tuple[Look, ...] = PLAIN


def _seen(window: Window) -> Snapshot:
    snapshot = window.outside.errands.last
    assert snapshot is not None, "scenes begin when the household is open"  # noqa: S101 - a fault of ours, not the world's
    return snapshot


def _find(window: Window, person: str, device: str) -> Pass:
    return next(one for one in _seen(window).passes if (one.person, one.device) == (person, device))


def _show(window: Window, snapshot: Snapshot) -> None:
    """Let every panel see a household that is not quite the real one."""
    window.outside.errands.seen.emit(snapshot)


def _board(window: Window) -> None:
    window.ways.back.emit()
    _show(window, _seen(window))
    window.board.select(_find(window, "Ines", "tablet").identity)


def _device(window: Window) -> None:
    window.ways.device.emit(_find(window, "Ines", "phone").identity)


def _enrol(window: Window) -> None:
    window.ways.new_device.emit("Odile")
    page = window.drawer.page()
    if isinstance(page, EnrolPage):
        page.form.device.setText("tablet")
        page.form.kind.take("android")


def _away(window: Window) -> None:
    window.drawer.shut()


def _lost(window: Window) -> None:
    _away(window)
    window.ways.lost.emit("in")


def _hand_over(window: Window) -> None:
    window.ways.back.emit()
    window.ways.hand_over.emit(_find(window, "Tomasz", "laptop").serial)


def _code(window: Window) -> None:
    window.hand_over.go(WayOut.CODES)


def _passphrase(window: Window) -> None:
    window.hand_over.left.passphrase_button.click()


def _paper(window: Window) -> None:
    window.ways.paper.emit(_find(window, "Tomasz", "laptop").serial)


def _paper_showing(what: str) -> Callable[[Window], None]:
    def begin(window: Window) -> None:
        window.paper.choices.paper_or_words.take(what)
        window.paper.choices.changed.emit()

    return begin


def _settings(window: Window) -> None:
    window.ways.back.emit()
    window.ways.back.emit()
    window.ways.settings.emit()


def _days(window: Window) -> None:
    window.ways.days.emit()
    _show(window, _seen(window))


def _help(window: Window) -> None:
    window.ways.help.emit("board")


def _gateway(state: str) -> Callable[[Window], None]:
    """The gateway's page in one of its states."""

    def begin(window: Window) -> None:
        window.ways.gateway.emit()
        _show(window, gateway_states.STATES[state](_seen(window)))

    return begin


def _gateway_visited(window: Window) -> None:
    _gateway("settings-wait")(window)
    window.outside.errands.visited.emit(gateway_states.PLAN)


def _gateway_out_of_reach(window: Window) -> None:
    _gateway("unknown-not-in-force")(window)
    window.outside.errands.visit_failed.emit(gateway_states.UNREACHABLE)


def _gateway_place(window: Window) -> None:
    window.ways.gateway_place.emit()
    _show(window, gateway_states.STATES["in-force"](_seen(window)))


def _gateway_key(window: Window) -> None:
    page = window.drawer.page()
    if isinstance(page, GatewayPlacePage):
        page.compare(gateway_states.DOOR, gateway_states.KEY)


def _nobody(window: Window) -> None:
    _away(window)
    _show(window, replace(_seen(window), passes=()))


def _closed(window: Window, **changes: object) -> None:
    window.closed.tell(replace(_seen(window), locked=True, **changes))  # type: ignore[arg-type]  # names of Snapshot
    window.turn_to(window.closed)


def _keyring_locked(window: Window) -> None:
    _closed(window, door=Door.KEYRING_LOCKED)


def _keyring_silent(window: Window) -> None:
    _closed(window, door=Door.KEYRING_SILENT)


def _keyring_empty(window: Window) -> None:
    _closed(window, door=Door.KEYRING_EMPTY)


def _keyring_absent(window: Window) -> None:
    _closed(window, door=Door.KEYRING_ABSENT)


def _second_copy(window: Window) -> None:
    _closed(window, read_only=True)


def _broken_diary(window: Window) -> None:
    _closed(window, diary_misfit=7)


HOUSEHOLD = (
    Scene("board", _board, PLAIN + SPECIAL),
    Scene("device", _device, PLAIN + SPECIAL),
    Scene("enrolling", _enrol, PLAIN + SPECIAL[:1]),
    Scene("lost", _lost, PLAIN + SPECIAL[:1]),
    Scene("hand-over", _hand_over, PLAIN + SPECIAL[:2]),
    Scene("hand-over-code", _code),
    Scene("hand-over-passphrase", _passphrase),
    Scene("hand-over-profile", form_states.profile, PLAIN[:2] + SPECIAL[:1]),
    Scene("pickup", pickup_states.opened, PLAIN + SPECIAL),
    Scene("pickup-visited", pickup_states.visited, PLAIN[:2]),
    Scene("pickup-quiet", pickup_states.quiet, PLAIN[:2]),
    Scene("pickup-over", pickup_states.picked_up, PLAIN[:2]),
    Scene("paper", _paper, PLAIN + SPECIAL[:2]),
    Scene("paper-card", _paper_showing("card"), PLAIN[:2]),
    Scene("paper-written", _paper_showing("written"), PLAIN[:2]),
    Scene("paper-spoken", _paper_showing("spoken"), PLAIN[:2]),
    Scene("settings", _settings, PLAIN[:2]),
    *(Scene(*state) for state in diary_states.STATES),
    Scene("days", _days, PLAIN + SPECIAL[:1]),
    Scene("sealed", sealed_states.copies, PLAIN + SPECIAL[:1]),
    Scene("sealed-gateway", sealed_states.at_gateway, PLAIN[:2]),
    Scene("key-paper", restore_states.key_paper, PLAIN[:2] + SPECIAL[:1]),
    Scene("key-paper-two", restore_states.key_paper_of_two, PLAIN[:2]),
    Scene("key-paper-letters", restore_states.key_paper_letters, PLAIN[:1]),
    *(Scene(name, begin, looks) for name, (begin, looks) in succession_states.STATES.items()),
    *(
        Scene(name, begin, looks)
        for name, (begin, looks) in (moving_states.STATES | reach_states.STATES | kinds_states.STATES).items()
    ),
    Scene("deputy", deputy_states.page, PLAIN + SPECIAL[:1]),
    Scene("deputy-sheets", deputy_states.sheets, PLAIN + SPECIAL[:1]),
    Scene("help", _help, PLAIN[:2]),
    *(Scene(f"gateway-{state}", _gateway(state), PLAIN[:2]) for state in gateway_states.STATES),
    Scene("gateway-differs", _gateway_visited, PLAIN[:2]),
    Scene("gateway-out-of-reach", _gateway_out_of_reach, PLAIN + SPECIAL),
    Scene("gateway-place", _gateway_place, PLAIN[:2] + SPECIAL[1:]),
    Scene("gateway-host-key", _gateway_key, PLAIN + SPECIAL[:1]),
    Scene("template", template_states.begun, PLAIN[:2]),
    Scene("template-example", template_states.example, PLAIN + SPECIAL),
    Scene("template-mistake", template_states.mistaken, PLAIN + SPECIAL[1:]),
    Scene("template-key", template_states.warned, PLAIN[:2]),
    Scene("hand-over-own", template_states.handing_over, PLAIN[:2] + SPECIAL[1:]),
    Scene("copies-none", copies_states.page(0), PLAIN[:2]),
    Scene("copies", copies_states.page(4, whole=False), PLAIN + SPECIAL),
    Scene("copies-many", copies_states.page(300), PLAIN[:2] + SPECIAL[:2]),
    Scene("copies-found", copies_states.looked_at, PLAIN[:2]),
    Scene("device-stick", copies_states.stick, PLAIN + SPECIAL[:2]),
    Scene("proof-wifi", proof_states.step(Stage.WIFI), PLAIN[:2]),
    Scene("proof-link", proof_states.step(Stage.LINK), PLAIN + SPECIAL),
    Scene("proof-at-home", proof_states.at_home, PLAIN[:2]),
    Scene("proof-hidden", proof_states.hidden, PLAIN[:2]),
    Scene("proof-refused", proof_states.refused, PLAIN[:2]),
    Scene("proof-told", proof_states.told, PLAIN[:2]),
    Scene("proof-proved", proof_states.proved, PLAIN + SPECIAL[:1]),
    Scene("device-proved", proof_states.device, PLAIN + SPECIAL[:1]),
    *(Scene(name, begin, PLAIN[: 1 + lamp]) for name, (begin, lamp) in renewal_states.STATES.items()),
    Scene("device-unnamed", adopt_states.unnamed, PLAIN[:2]),
    *(Scene(name, begin, looks) for name, (begin, looks) in many_states.STATES.items()),
    Scene("nobody-yet", _nobody, PLAIN[:2]),
    Scene("keyring-locked", _keyring_locked),
    Scene("keyring-silent", _keyring_silent, PLAIN[:2]),
    Scene("keyring-empty", _keyring_empty, PLAIN[:2]),
    Scene("keyring-absent", _keyring_absent, PLAIN[:2]),
    Scene("second-copy", _second_copy, PLAIN[:2]),
    Scene("broken-diary", _broken_diary, PLAIN[:2]),
    # The desk stays before the window until it is left, so its scenes come last.
    Scene("desk-code", desk_states.code, PLAIN + SPECIAL[:2]),
    Scene("desk-computer", desk_states.computer, PLAIN[:1]),
    Scene("desk-opened", desk_states.opened, PLAIN[:1]),
    Scene("desk-big", desk_states.big(desk_states.code), PLAIN[:1]),
    Scene("desk-covered", desk_states.covered, PLAIN[:2] + SPECIAL[:1]),
    Scene("desk-words-big", desk_states.big(desk_states.covered), PLAIN[:1]),
    Scene("desk-picked-up", desk_states.picked_up, PLAIN[:2] + SPECIAL[1:2]),
    Scene("desk-words", desk_states.words, PLAIN[:1]),
    Scene("desk-typed", desk_states.typed, PLAIN[:1]),
    Scene("desk-asking", desk_states.asking, PLAIN[:2] + SPECIAL[:1]),
    Scene("desk-last", desk_states.last_one, PLAIN[:2]),
    Scene("desk-trouble", desk_states.trouble, PLAIN[:1]),
)


def _founding(window: Window) -> None:
    window.turn_to(window.founding)


def _founding_typed(window: Window) -> None:
    form = window.founding.form
    for line, typed in (
        (form.name, "Quince Cottage"),
        (form.host, "home.quince.example"),
        (form.home, "198.51.100.0/24"),
    ):
        line.clear()
        line.insert(typed)


NEW_HOUSEHOLD = (
    Scene("founding", _founding, PLAIN[:2]),
    Scene("founding-typed", _founding_typed, PLAIN + SPECIAL[:2]),
    Scene("adopting", adopt_states.nothing, PLAIN[:1]),
    Scene("adopting-locked", adopt_states.looked(locked=True), PLAIN + SPECIAL[:2]),
    Scene("adopting-open", adopt_states.looked(locked=False), PLAIN[:2]),
    # The page that brings a household back stays until it is left, so its scenes come last.
    Scene("restore", restore_states.begun, PLAIN[:2]),
    Scene("restore-keyring", restore_states.keyring_locked, PLAIN[:2]),
    Scene("restore-paper", restore_states.half_read, PLAIN[:2] + SPECIAL[:1]),
    Scene("restore-wrong", restore_states.wrong_words, PLAIN[:2]),
    Scene("restore-parts", restore_states.by_parts, PLAIN + SPECIAL[:2]),
    Scene("restore-inside", restore_states.inside, PLAIN + SPECIAL[:2]),
    Scene("restore-done", restore_states.done, PLAIN[:2]),
    Scene("restore-done-paper", restore_states.done_from_paper, PLAIN[:1]),
    Scene("restore-done-parts", restore_states.done_by_parts, PLAIN[:2]),
)
