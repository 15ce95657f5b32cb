"""What a change of the household's settings means, the people first; and what the diary says of it."""

from __future__ import annotations

from hearthkey.core.household import Gateway, Household
from hearthkey.core.network import FULL
from hearthkey.core.phrases import SEMICOLON, Listing, Phrase, sentences, several
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.settling import Reach, Setting, SettlePlan

NAMED = 3
"""So many devices are named in a sentence; of more the first two are, and the rest is counted."""


def whom(titles: tuple[str, ...]) -> Listing:
    """Whose devices, in words, of however many."""
    return several(titles, NAMED)


def plan(told: SettlePlan) -> tuple[Sentence, ...]:
    """All that follows, a sentence for each thing."""
    return (*consequence(told), *besides(told))


def consequence(told: SettlePlan) -> tuple[Sentence, ...]:
    """What becomes different, and who has to do something."""
    if told.changes_nothing:
        return (Sentence("Everything would stay as it is.", {}),)
    return (*_differences(told), devices(told))


def _differences(told: SettlePlan) -> tuple[Sentence, ...]:
    facts = _facts(told.after)
    return tuple(Sentence(_TEMPLATES[one.setting, _kind(one.setting, one.reach, told)], facts) for one in told.touches)


def _kind(setting: Setting, reach: Reach, told: SettlePlan) -> str:
    if setting is Setting.HOME:
        return "full" if reach is Reach.GATEWAY else "split"
    if setting is Setting.TUNNEL:
        return told.after.tunnel
    return "none" if setting is Setting.DNS and not told.after.dns_servers else ""


_TEMPLATES = {
    (Setting.NAME, ""): "The household is called {name} from now on; certificates keep the name they were made with.",
    (Setting.HOST, ""): "The house is reached at {host}, and the gateway gets a new certificate for that name.",
    (Setting.HOME, "split"): "Through the tunnel devices reach {home}.",
    (Setting.HOME, "full"): "At home is {home}; everything goes through home anyway.",
    (Setting.DNS, ""): "Names are asked of {dns}. The gateway tells devices so at each connection; where it was typed "
    "in by hand, the old one stays.",
    (Setting.DNS, "none"): "Devices are told no DNS server at home any more; where it was typed in by hand, it stays.",
    (Setting.TUNNEL, "full"): "Everything that devices do on the internet goes through home.",
    (Setting.TUNNEL, "split"): "What is not at home keeps going its own way.",
    (Setting.INNER, ""): "Inside, devices get addresses from {inner}; the gateway gives them out at each connection.",
    (Setting.SUFFIX, ""): "New devices are known as a code in {suffix}; those that are there keep theirs.",
}


def besides(told: SettlePlan) -> tuple[Sentence, ...]:
    """What becomes of the tray, and when the gateway does as it is said."""
    return (_IN_TRAY, *_gateway(told)) if told.rewritten else _gateway(told)


_IN_TRAY = Sentence(
    "What waits in the tray takes it along when it leaves; a file that was saved of it before has to be saved again.",
    {},
)


def devices(told: SettlePlan) -> Sentence:
    """Who has to do something."""
    if not told.devices:
        return Sentence("No device has to be told.", {})
    if len(told.devices) == 1:
        return Sentence("{whom} asks for a new bundle.", {"whom": whom(told.devices)})
    return Sentence("{whom} ask for a new bundle.", {"whom": whom(told.devices)})


def _gateway(told: SettlePlan) -> tuple[Sentence, ...]:
    if told.after.practice or not told.reaches_gateway:
        return ()
    if told.before.gateway_host != told.after.gateway_host:
        if not told.devices:
            return (Sentence("It takes effect with the next delivery.", {}),)
        return (Sentence(_STILL_ANSWERS, {"old": told.before.gateway_host}),)
    if told.let_go:
        return (Sentence(_LET_GO, {"old": told.let_go}),)
    if told.new_certificate and not told.touches:
        return (Sentence("The gateway gets a new key and certificate with the next delivery.", {}),)
    return (Sentence("The gateway goes by it from the next delivery on.", {}),)


_STILL_ANSWERS = (
    "The gateway answers to {old} as well, so whoever has the old bundle still gets in, as long as that name leads "
    "home."
)
_LET_GO = (
    "From the next delivery on the gateway answers to {old} no more. No device needs that name; keep it paid for a "
    "while all the same."
)


def settled(told: SettlePlan, made: Gateway | None) -> Listing:
    """What the diary says: each setting with what it was before."""
    before, after = _facts(told.before), _facts(told.after)
    changed = [
        Phrase(
            "{setting} {after} (before: {before})",
            {"setting": one.setting.value, "after": _listed(after[fact]), "before": _listed(before[fact])},
        )
        for one in told.touches
        for fact in [_FACT[one.setting]]
    ]
    said: list[str] = []
    if changed:
        facts = {"changed": Listing(changed, SEMICOLON, SEMICOLON)}
        said.append(Phrase("The household’s settings were changed: {changed}.", facts))
    if made is not None:
        facts_of_it = {"host": made.host, "day": day(made.not_after)}
        said.append(Phrase("The gateway got a new certificate for {host} until {day}.", facts_of_it))
    if told.let_go:
        said.append(Phrase("It answers to {old} no more.", {"old": told.let_go}))
    if told.devices:
        said.append(Phrase("In need of a new bundle: {devices}.", {"devices": Listing(told.devices)}))
    return sentences(said)


def _listed(fact: object) -> object:
    return Listing(str(one) for one in fact) if isinstance(fact, tuple | list) else fact


_FACT = {
    Setting.NAME: "name",
    Setting.HOST: "host",
    Setting.HOME: "home",
    Setting.DNS: "dns",
    Setting.TUNNEL: "tunnel",
    Setting.INNER: "inner",
    Setting.SUFFIX: "suffix",
}


def _facts(household: Household) -> dict[str, object]:
    return {
        "name": household.certified_name,
        "host": household.gateway_host,
        "home": household.home_subnets,
        "dns": household.dns_servers or Phrase("none"),
        "tunnel": Phrase("full") if household.tunnel == FULL else Phrase("split"),
        "inner": household.tunnel_subnet,
        "suffix": household.identity_suffix,
    }
