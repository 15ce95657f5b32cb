"""What help says about each spot of the window."""

from __future__ import annotations

from typing import NamedTuple


class Help(NamedTuple):
    """Help about a spot.

    Args:
        title: what the spot is.
        lines: short sentences, the most wanted first.
        keys: keys and what they do.
    """

    title: str
    lines: tuple[str, ...]
    keys: tuple[tuple[str, str], ...] = ()


BOARD = "board"

HELP = {
    BOARD: Help(
        "The sheet",
        (
            (
                "People run down, time runs across. Each line is a device: it begins when its pass was made and ends "
                "when the pass does."
            ),
            "The yellow ribbon is today. Read down it: each sign on it says how one device stands right now.",
            (
                "The scale folds: the weeks around today are drawn wide, months narrower, years narrowest. So lengths "
                "compare within one fold only; the exact date stands at the right."
            ),
            "Small triangles under the days stand where something is to be done; F2 lists it.",
            "Red is for what wants you. Where nothing is red, nothing has to be done.",
            "The double rule is the end of the revocation list: behind it nobody gets in without the next one.",
        ),
        (
            ("Ctrl+N", "new device"),
            ("Ctrl+F", "find"),
            ("Ctrl+L", "lost or stolen"),
            ("F2", "what is to be done"),
            ("Alt+1, 2, 3", "a month, a year, all of it"),
            ("Ctrl+Z", "take the last change back"),
            ("Enter", "open the device"),
            ("F6", "next part of the window"),
        ),
    ),
    "device": Help(
        "A device",
        (
            "The button under the first sentence is the next thing to do. Where there is none, all is done.",
            "Stop now keeps the device out for the time being; it can be let back in on the same page.",
            "Revoke for good cannot be taken back. The device then needs a new pass.",
            "Both take effect when the gateway holds the list that says so.",
            "The life line shows its days in order; the yellow tag is today.",
        ),
        (("Esc", "close the drawer"),),
    ),
    "proving": Help(
        "Prove it",
        (
            (
                "A test in the Wi-Fi at home shows little. What counts is the way in from outside: Wi-Fi off, connect, "
                "open the link."
            ),
            (
                "Whoever opens the link from inside the tunnel reads “You are in”, and the proof is written down with "
                "its time and address."
            ),
            (
                "The address says that it came through the tunnel. It does not say which device it was, nor that Wi-Fi "
                "was off; whoever holds the device knows that."
            ),
            "The link is good for ten minutes and opens nothing else. It is closed with the page.",
            "What was only told is kept as told. No proof can be taken back.",
        ),
        (("Ctrl+E", "prove the selected device"), ("Esc", "close the drawer and the link")),
    ),
    "renewing": Help(
        "Renewing",
        (
            "A renewed device keeps its identity and gets a new key. Its old pass stays as it is.",
            (
                "Once the new pass was handed over and seen to get in, the old one goes for good. A proof does not say "
                "which of the two a device used: look on the device that the new one is chosen."
            ),
            "A renewal can be taken back on the device’s page as long as its bundle is in the tray.",
            "A round can be stopped between two devices. What was made stays; the rest stays ticked.",
            "Days on which you meet somebody are kept under Visits. The last one before an end is the day to act.",
            "Another device in the place of one stops the old one at once. Until the new one works it can be let in.",
        ),
        (("Ctrl+R", "renew the selected device"), ("Ctrl+Enter", "begin"), ("Esc", "put it aside")),
    ),
    "enrolling": Help(
        "A new device",
        (
            "Whose it is, what the family calls it, what it is, and until when: that is all that is asked.",
            "The sentence under the line says what follows, before anything is made.",
            "A guest gets a week unless you say otherwise; everybody else two years.",
            "What is made waits in the tray. Nobody has it until you hand it over.",
            "Close the drawer at any time: what you typed is still there when you come back.",
        ),
        (("Ctrl+Enter", "make the pass"), ("Esc", "put it aside")),
    ),
    "hand-over": Help(
        "Handing over",
        (
            (
                "The bundle and its passphrase go two different ways: the bundle by a ticket on the home Wi-Fi, on a "
                "stick or as a file; the passphrase by voice or on paper."
            ),
            "They are never shown at the same time.",
            "Each way out says who can open it. Choose one that the device knows.",
            "Say that the device has it once it gets in. The key is then erased here and exists on the device alone.",
            "A bundle that was lost is never sent again. Replace the pass instead.",
        ),
        (("Ctrl+Shift+D", "the desk: all that wait, one after another"),),
    ),
    "days": Help(
        "What is to be done",
        (
            "Every date that ends has a line here before it does: who, by when, how long it takes, and why.",
            "What stands in red has come due. The rest can wait, in the order in which it comes.",
            "The same days go into the family’s calendar: “Calendar file” writes them, and again updates them.",
        ),
    ),
    "sealed": Help(
        "Sealed copies",
        (
            "A copy holds everything that this computer knows, so that another one can take over.",
            "It is made after every change, and lies in the data folder. Carry one away: a stick at a friend’s house.",
            "Trying one opens it as a new computer would. Do it once or twice a year.",
            "The key on paper outlives every stick: two pages, for a scanner and for hands. Scan it once to be sure.",
            "On a computer without a household, the first page has the way: “From a sealed copy …”.",
        ),
    ),
    "kinds": Help(
        "Kinds of devices",
        (
            "What each kind can read, which key and container follow from it, and why. The app goes by this alone.",
            "Does a device do something else? Correct the text: what is wrong with it is said below while you type.",
            "Yours stands before ours, and stays when the app is renewed. Set it aside, and ours stands again.",
            "Once you have tried a step on a device, say so in it: tried = true, with the day.",
        ),
    ),
    "way-in": Help(
        "The way in",
        (
            "Each link from a name to the gateway’s answer, as a packet meets them. Mend the first broken one.",
            "From inside it proves nothing. Take the laptop to a phone’s mobile data, and check again.",
            "Only what you start yourself is sent: a few small packets, to the gateway alone.",
            "What a check cannot see, it calls not known. A device that gets in shows the rest.",
        ),
    ),
    "network": Help(
        "Network plan",
        (
            "Everything here is worked out from the settings; nobody is asked, and nothing leaves this computer.",
            "A subnet that many homes and hotels have is not reached from there: the device takes it for its own.",
            "Type what the router’s pages show as its internet address: some lines cannot be reached at all.",
            "What to expect is a rough guide: it goes by the slower of the line and the gateway.",
        ),
    ),
    "forwarding": Help(
        "Forwarding sheet",
        (
            "For whoever stands before the router’s pages: what to pass on, where to, and what to leave closed.",
            "Routers call it otherwise each; the words to look for stand beside each thing.",
            "Save it as PDF and take it along, or read it here.",
        ),
    ),
    "moving": Help(
        "Moving day",
        (
            "Say what will be new. The page puts the steps in order and counts the devices that need a new bundle.",
            "What is new is made to work beside what is old; devices learn it; only then the old goes.",
            "Keep the list, and tick a step when it is done. What the app can see, it does not take on trust.",
            "The last step done can be taken back; the page says how to undo it outside.",
        ),
    ),
    "succession": Help(
        "The next CA",
        (
            "A CA ends one day, and every pass with it. The next one is made beside it, years before.",
            "The old one vouches for the new one, so nobody notices while devices change over, one visit at a time.",
            "Each step can be taken back, but the last: when the old CA is put away, its key is gone.",
            "Was the computer stolen, or are the words lost? Say so at the top; the page says what to do first.",
        ),
    ),
    "deputy": Help(
        "Somebody takes over",
        (
            "Three sheets, given to three people. Any two together open a sealed copy; one alone opens nothing.",
            "The letter says what works without anybody, until when, and how to take over. It gives nothing away.",
            "Once a year ask for each sheet and type its words here: that is the drill, and it needs no other sheet.",
            "New sheets replace the old ones for every copy that is made from then on.",
            "A stop set lets somebody stop a lost device at the gateway, and do nothing else.",
            "On a computer without a household: hearthkey deputy restore, and the file.",
        ),
    ),
    "lost": Help(
        "Lost or stolen",
        (
            "Type two letters of the person or the device, then Enter. The device is stopped.",
            "It can be let back in when it turns up, so when in doubt, stop it.",
            "It takes effect when the gateway holds the new list.",
            "Outside this app: lock or find the device from afar, block its SIM, change the mail password.",
        ),
        (("Up, Down", "choose among the matches"), ("Enter", "stop it"), ("Esc", "change nothing")),
    ),
    "founding": Help(
        "Founding a household",
        (
            "Founding makes the household’s own CA: what it signs gets in, nothing else does.",
            "Give the name under which the house is reached from outside. It is written into every bundle.",
            "The seven words open the CA key. Write them down and keep them with the family’s papers.",
            "Without the words nothing can be renewed or stopped; nobody can make new ones for you.",
        ),
    ),
    "gateway": Help(
        "The gateway",
        (
            "The gateway decides who gets in, by the list that it holds. A stop counts once the list there says so.",
            (
                "In force is said only of what was read back from the gateway. When it cannot be reached, what it "
                "holds is not known, and that is said too, with the time."
            ),
            "A new list goes there by itself while the app is open. Settings and certificates go when you deliver.",
            "What differs reads the gateway and changes nothing there.",
            (
                "A delivery puts the files down beside those in force, reads them back, and changes over all at once. "
                "If anything fails on the way, those of before stay."
            ),
            (
                "At first contact compare the host key with what the gateway itself says. When it shows another one "
                "later, nothing is sent until you have compared again."
            ),
        ),
        (("Ctrl+G", "this page"), ("Ctrl+Shift+G", "deliver now"), ("Esc", "close the drawer")),
    ),
    "household": Help(
        "The household",
        (
            "Type over what is to be different. What follows, and for whom, is said before anything is changed.",
            (
                "Bundles in the tray take a change along. Devices that have theirs go on with the old one until you "
                "replace it."
            ),
            (
                "Another name for the house needs a new gateway certificate, and so the passphrase. Everything else "
                "can be changed back with one click."
            ),
            (
                "Addresses inside and DNS servers are given out by the gateway at each connection, so no device has "
                "to be told."
            ),
            "The list and the gateway’s certificate can be made anew here long before they end.",
        ),
        (("Ctrl+Enter", "change it"), ("Esc", "close the drawer")),
    ),
    "templates": Help(
        "Your own template",
        (
            "Write, or paste, what a program wants to read, and put slots where the household’s own values belong.",
            (
                "Besides slots there are if, for, raw and filters. The preview follows what you type, and a mistake is "
                "named with its line."
            ),
            "Secrets are hidden on the screen and written into the file.",
            (
                "device_key is the device’s key as it is: whoever holds the file gets in. device_key_sealed is the "
                "same key under the bundle’s passphrase."
            ),
            "A kept template for devices is one more way on every hand-over page.",
        ),
        (("Ctrl+T", "this page"), ("Ctrl+Enter", "keep it"), ("Esc", "close the drawer; what is typed stays")),
    ),
    "settings": Help(
        "Settings",
        (
            "Every change takes effect at once; there is nothing to confirm.",
            "Locking lets go of the CA key. Everybody who gets in still does.",
            "What is written into bundles stands on the page of the household.",
        ),
        (("Esc", "close the drawer"),),
    ),
    "copies": Help(
        "Copies that left",
        (
            "Every file, stick, pick-up and drag by which a bundle left stands here, the newest of each device first.",
            "An open ring means: nobody knows whether that copy is gone.",
            "Look now reads the place again. Only a file that is still exactly what was written can be deleted here.",
            (
                "A stick may keep what was deleted until something else is written there. That is why the passphrase "
                "never travels with the bundle."
            ),
            "A copy of a pass that was revoked or has ended opens nothing any more.",
        ),
        (("Ctrl+K", "this page"), ("Up, Down", "choose a copy"), ("Esc", "close the drawer")),
    ),
    "diary": Help(
        "The diary",
        (
            "Everything that was done stands here, newest first. It names no secret.",
            "Each entry seals the one before it, so an entry that was altered or taken out shows.",
            "A sealed copy knows where the diary ended then, so an end that was cut off shows too.",
            "Search takes several words, with accents or without; an entry is found when all of them occur in it.",
        ),
        (
            ("F3, Shift+F3", "the next entry found, the one before"),
            ("Ctrl+C", "copy the chosen entry"),
            ("Ctrl+Z", "take the last change back; the diary keeps both"),
        ),
    ),
}
"""By the name of a spot, as `Ways.help` carries it."""


def help_for(spot: str) -> Help:
    """Help about a spot; where nothing is said about it, about the sheet."""
    return HELP.get(spot, HELP[BOARD])
