"""Where a click or a key can lead; panels ask, the window goes."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal


class Ways(QObject):
    """Requests of panels to the window.

    Signals:
        device: open a device's page; its identity.
        new_device: open the page for a new device; the person's name, or empty.
        replace_device: the same for a new pass of a known device; its identity.
        hand_over: open the hand-over page of a waiting pass; its serial.
        hand_over_by: the same, and begin with a way out: its serial, and the key of the way.
        desk: open the desk for several waiting passes, by their serials; with none, for all that wait.
        lost: open "lost or stolen"; text already typed, or empty.
        let_in, stop, revoke: ask for the plan of a device; its identity.
        prove: open the page on which a pass is proved; its serial.
        renew: open the page on which passes are renewed, a device by its identity, or with none a round.
        another: open the page on which another device takes the place of one; its identity.
        leaves: open the page on which somebody leaves the household; the person’s name.
        draft: a device that is being typed in: person, device, end (datetime or None); empty to forget it.
        find: put the cursor into Find.
        gateway: open the gateway's page.
        gateway_place: open the page that says where the gateway's files go.
        deliver: deliver to the gateway now.
        templates: open the page of the householder's own templates.
        paper: open the page of sheet, card and messages for a device; the serial of its pass.
        days: open the list of what is to be done.
        sealed: open the page of the sealed copies.
        restore: open the page that brings a household back.
        deputy: open the page for whoever takes over.
        household: open the household's own page.
        sign_list, renew_gateway: the same, at the button that signs the list anew, or renews the gateway's certificate.
        succession: open the page of the CA that follows this one.
        kinds: open the page of the kinds of devices.
        moving: open the page of moving day.
        way_in, network_plan, forwarding: open the pages of the way in from outside.
        succession_for: the same, where something has happened; the cause.
        key_gone: open the page for a CA key that is lost or perhaps stolen.
        copies: open the list of copies that left, of a device by its identity, or with none of the household.
        diary, settings, help, lock, found: open those; help carries the name of the spot.
        back: close whatever lies over the board.
        closed: something with the focus has gone; the board takes it.
    """

    device = Signal(str)
    new_device = Signal(str)
    replace_device = Signal(str)
    hand_over = Signal(str)
    hand_over_by = Signal(str, str)
    desk = Signal(object)
    lost = Signal(str)
    let_in = Signal(str)
    stop = Signal(str)
    revoke = Signal(str)
    draft = Signal(str, str, object)
    prove = Signal(str)
    renew = Signal(str)
    another = Signal(str)
    leaves = Signal(str)
    find = Signal()
    gateway = Signal()
    gateway_place = Signal()
    deliver = Signal()
    templates = Signal()
    paper = Signal(str)
    days = Signal()
    sealed = Signal()
    restore = Signal()
    deputy = Signal()
    household = Signal()
    sign_list = Signal()
    renew_gateway = Signal()
    succession = Signal()
    kinds = Signal()
    moving = Signal()
    way_in = Signal()
    network_plan = Signal()
    forwarding = Signal()
    succession_for = Signal(str)
    key_gone = Signal()
    copies = Signal(str)
    diary = Signal()
    settings = Signal()
    help = Signal(str)
    lock = Signal()
    found = Signal()
    back = Signal()
    closed = Signal()
