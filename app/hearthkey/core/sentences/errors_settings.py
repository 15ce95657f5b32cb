"""Sentences about what somebody typed: names, hosts, subnets, dates, choices, passphrases."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    # names and hosts
    "name-empty": ("The {what} has no letter or figure in it.", "Give a name that the family uses."),
    "name-too-long": (
        "The {what} has {length} characters; a certificate has room for {limit} (RFC 5280 appendix A.1).",
        "Shorten it.",
    ),
    "name-unprintable": (
        "Character {place} of the {what} ({character}) cannot be seen, or turns the text around it.",
        "Type the name anew rather than pasting it.",
    ),
    "host-empty": ("The {what} is empty.", "Give the name that devices reach, for instance home.quince.example."),
    "host-too-long": ("The {what} has {length} characters; DNS ends at 253.", "Give a shorter name."),
    "host-malformed": (
        '"{host}" is not a name that DNS can look up: "{label}" does not fit.',
        "A name is made of letters, figures and hyphens between dots, without spaces, underscores, stars or ports.",
    ),
    "suffix-too-long": (
        "The identity suffix has {length} characters; a code and a dot go before it, so {limit} is the most.",
        "Give a shorter one with --identity-suffix.",
    ),
    "gateway-unreachable": ("{host} is nobody’s address.", "Give the name or address of the gateway."),
    # subnets
    "subnet-malformed": ('The {what} "{text}" is not a subnet.', "Write it like 198.51.100.0/24 or 2001:db8:1::/64."),
    "subnet-has-host-bits": (
        "The {what} {text} is an address within a subnet.",
        "If the whole subnet is meant, write {meant}.",
    ),
    "subnet-too-wide": (
        "The {what} {text} is the whole internet.",
        "Give the subnet at home; for all traffic use --tunnel full.",
    ),
    "subnet-too-small": (
        "The tunnel subnet {text} has no room for devices.",
        "Give a /24; --tunnel-subnet quiet has one proposed.",
    ),
    "subnets-missing": (
        "No home subnet was given.",
        "Name at least one with --home-subnet, for instance 198.51.100.0/24.",
    ),
    "subnets-overlap": (
        "{one} and {other} overlap, so some addresses would lie in two places at once.",
        "Give subnets that lie apart; --tunnel-subnet quiet has a free one proposed.",
    ),
    "no-quiet-subnet": (
        "The home subnets leave no private addresses over for the tunnel (RFC 1918).",
        "Name a free subnet with --tunnel-subnet.",
    ),
    "dns-malformed": ('"{text}" is not the address of a DNS server.', "Give an address, for instance 198.51.100.1."),
    "tunnel-kind-unknown": (
        'The tunnel cannot be "{text}".',
        "Say split (devices reach home only) or full (all their traffic goes through home).",
    ),
    # choices
    "key-set-unknown": ('There is no key set "{text}".', "Choose one of {known}."),
    "kind-unknown": ('There is no kind of device "{text}".', "Choose one of {known}."),
    "container-unknown": ('There is no container "{text}".', "Choose strong or old."),
    "picture-unknown": ('Codes cannot be drawn as "{text}".', "Choose png or svg."),
    "reason-unknown": (
        '"{text}" is not a reason for revoking for good.',
        "Choose one of {known}. To stop for now: hearthkey stop.",
    ),
    "word-missing": ("{what} is missing.", "hearthkey VERB --help shows what belongs there."),
    # dates
    "date-malformed": ('"{text}" is not a day.', "Write it as year-month-day, for instance 2027-05-01."),
    "days-out-of-range": ("{text} days is not a time that a pass can last.", "Give a number of days from 1 on."),
    "end-in-the-past": ("The pass would have ended already, on {end}.", "Give a day that lies ahead."),
    "end-after-authority": (
        "The pass would outlive the CA, which ends on {authority_end}; after that nothing it signed counts.",
        "Choose an end up to that day.",
    ),
    "clock-behind": (
        "This computer says it is {clock} UTC, but the last thing was done on {last} UTC.",
        (
            "What is signed now would be refused. Set the clock, then do it again. If it is right now and was ahead "
            "then: hearthkey lists --clock-was-ahead. Nothing was changed."
        ),
    ),
    "clock-not-ahead": ("Nothing here is dated later than now.", "There is nothing to put right."),
    # passphrases
    "passphrase-empty": ("The passphrase is empty.", "Give one; an empty one is read differently by every device."),
    "passphrase-not-ascii": (
        "Character {place} of the passphrase is not on every keyboard, and devices turn it into different bytes.",
        "Use letters without accents, figures, signs and spaces.",
    ),
    "passphrase-too-short": (
        "The passphrase is shorter than {limit} characters.",
        "Take the seven words that the app offers, or a longer one.",
    ),
    "passphrase-too-long": ("The passphrase is longer than {limit} characters.", "Give a shorter one."),
    "passphrase-weak": (
        "The passphrase would not stand long guessing, and whoever steals the key text can guess without limit.",
        "Take the seven words that the app offers, or add unrelated words to yours.",
    ),
    "passphrase-differs": ("The two passphrases differ.", "Type both again. Nothing was made."),
    "passphrase-needed": (
        "The passphrase is needed, and there is no terminal to ask at.",
        "Put it into a file that only you can read, and name it with --passphrase-file.",
    ),
    "wrong-passphrase": (
        "The passphrase does not open it.",
        "Check capital letters and spaces, and whether it is the passphrase of this very thing.",
    ),
    "yes-needed": ("This cannot be undone, and there is nobody to ask.", "Look at it with --plan, then add --yes."),
}
