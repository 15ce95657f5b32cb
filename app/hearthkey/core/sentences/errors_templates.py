"""Sentences about the householder's own templates."""

from __future__ import annotations

_LANGUAGE = "A template knows slots, if, for, raw and filters: no calls, no arithmetic, no other files."
_TRY_IT = "The preview shows it at once."

REFUSED: dict[str, tuple[str, str]] = {
    # name and file name
    "template-kind-unknown": ('A template cannot be for "{text}".', "Choose one of {known}."),
    "template-stem-unfit": (
        '"{text}" will not do as a file name on every computer.',
        "Use letters without accents, figures, hyphens, underscores and dots, beginning with a letter or figure.",
    ),
    "template-ending-unfit": (
        '"{text}" will not do as the ending of a file name.',
        "Use up to {limit} letters and figures, for instance conf.",
    ),
    "template-device-mark-missing": (
        'Every device would write the same file, for "{text}" does not say where the device’s name goes.',
        "Put {mark} into the file name.",
    ),
    "template-device-mark-stray": (
        'The gateway’s file name "{text}" holds {mark}, and the gateway is no device.',
        "Take it out.",
    ),
    "template-file-name-reserved": (
        'Windows cannot open a file named "{text}".',
        "Choose another beginning than con, nul, aux, prn, com1 or lpt1, and no dot at the end.",
    ),
    "template-file-name-too-long": (
        "The file name can grow to {length} characters; {limit} is the most.",
        "Shorten it.",
    ),
    # the text
    "template-empty": ("There is nothing in the template.", "Paste a text, or begin with the starting text."),
    "template-too-long": ("The template has {size} octets; {limit} is the most.", "Leave out what no slot is in."),
    "template-hidden-character": (
        "Line {line} holds a character that cannot be seen, or turns the text around it ({character}).",
        "Type the line anew rather than pasting it.",
    ),
    # reading it
    "template-mistake": ("Line {line} cannot be read: {seen}", "Look at its braces, quotes and brackets. " + _TRY_IT),
    "template-part-unknown": (
        "Line {line}: {seen} is nothing that a template here can do.",
        "Tags are {known}. " + _LANGUAGE,
    ),
    "template-unclosed": ("What begins on line {line} with {seen} does not end.", "Put {wanted} where it ends."),
    "template-too-deep": ("Line {line} is nested deeper than {limit} levels.", "Take it apart into simpler lines."),
    "template-too-intricate": ("Line {line}: more than {limit} {what}.", "Write less of it with slots."),
    "template-slot-unknown": ("Line {line}: there is no slot {name}.", "The nearest is {near}. The list has them all."),
    "template-slot-elsewhere": (
        "Line {line}: {name} is a slot of templates for the {of}.",
        "Use another slot, or make this a template for the {of}.",
    ),
    "template-name-taken": (
        "Line {line}: {name} is the name of something else already.",
        "Call what the loop runs over by another name.",
    ),
    "template-filter-unknown": ("Line {line}: there is no filter {name}.", "The nearest is {near}."),
    "template-argument-unfit": (
        "Line {line}: the filter {name} does not take what stands in its brackets.",
        "Give it texts in quotes, or figures, as the list of filters shows.",
    ),
    "template-kind-differs": (
        "Line {line}: {seen} stands where {wanted} is needed.",
        "Loop over a list with for, or put its parts together with join; a text is written as it is.",
    ),
    # rendering it
    "template-slot-empty": (
        "Line {line}: there is nothing in {name} today.",
        "Put the line between if and endif with the test “is defined”, or name another text with the filter default.",
    ),
    "template-list-empty": (
        "Line {line} asks for the first or last of a list that is empty today.",
        "Loop over the list instead, or put the line between if and endif.",
    ),
    "template-not-a-subnet": (
        "Line {line}: only a subnet has an address, a netmask and a prefix length.",
        "Use these filters on tunnel_subnet, or on what a loop over home_subnets gives.",
    ),
    "template-result-too-long": (
        "On line {line} the result grows past {limit} octets, more than any program’s settings.",
        "Look at the loops and the filters replace and indent.",
    ),
    "template-runs-too-long": (
        "On line {line} the template was stopped: it would run too long ({limit} steps are the most).",
        "Put fewer loops into each other.",
    ),
    # keeping and using it
    "template-unknown": ('There is no template "{text}".', "There are: {known}."),
    "template-not-for-this": ("The template {name} is for the {of}.", "Choose another template."),
}
