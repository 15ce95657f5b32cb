"""The sets and chains of the gateway's packet rules, each rule with its reason; the language is that of nft(8)."""

from __future__ import annotations

from collections.abc import Iterable

from hearthkey.core.host import IKE_PORT, NAT_PORT, HostFacts
from hearthkey.core.network import Subnet
from hearthkey.formats.commented import Block, Line, Part

TABLE = "inet hearthkey_home"
_REFUSE = "reject with icmpx admin-prohibited"
_WORD = {4: "ip", 6: "ip6"}
_POLICY = {
    "accept": "Looks at every packet that this computer passes on. It passes packets on for others too, and about "
    "theirs this table has no opinion: accept here leaves them to the other tables.",
    "drop": "Looks at every packet that this computer passes on, and drops what the rules below do not name, for it "
    "is to be the router of the tunnel alone. If it is the router of the house too, or runs containers, do not "
    "load this file: have it written for a computer that forwards for others.",
}


def chains(facts: HostFacts) -> list[Part]:
    """Everything inside the table, in an order in which it can be read."""
    made: list[Part] = [one for family in facts.families for one in _sets(facts, family)]
    made += [_from_tunnel(facts), _to_tunnel(), _passing(facts), _segments(facts), _arriving(facts)]
    if facts.masquerade:
        made.append(_own_address(facts))
    # A router of the house stands between the two networks, so that no way is shorter than the one through it.
    if not facts.tunnel_interface and not facts.forwards_for_others:
        made.append(_leaving(facts))
    return made


def _sets(facts: HostFacts, family: int) -> list[Part]:
    sets: list[Part] = [_set("tunnel", family, "Where devices are, inside the tunnel.", facts.tunnel(family))]
    if facts.home(family):
        sets.append(_set("home", family, "What devices may reach at home.", facts.home(family)))
    return sets


def _set(name: str, family: int, told: str, subnets: Iterable[Subnet]) -> Block:
    return Block(
        f"{told} IPv{family}.",
        f"set {name}{family}",
        [
            Line(f"It holds IPv{family} addresses.", f"type ipv{family}_addr"),
            Line("Subnets may stand in it, not only single addresses.", "flags interval"),
            Line("The subnets as the household has them.", f"elements = {{ {', '.join(map(str, subnets))} }}"),
        ],
    )


def _from_tunnel(facts: HostFacts) -> Block:
    rules: list[Part] = [
        Line("Drop what belongs to no connection and begins none, such as a stray end of one.", "ct state invalid drop")
    ]
    rules += [
        Line(
            f"Devices do not reach each other, over IPv{family}: one that is stolen is no way to the next.",
            f"{_WORD[family]} daddr @tunnel{family} {_REFUSE}",
        )
        for family in facts.families
    ]
    for family in facts.families:
        word = _WORD[family]
        if facts.home(family):
            rules.append(
                Line(
                    f"Devices reach home over IPv{family}: this is what the gateway is for.",
                    f"{word} saddr @tunnel{family} {word} daddr @home{family} accept",
                )
            )
        if facts.full:
            way = f'oifname "{facts.outer_interface}" ' if facts.outer_interface else ""
            rules.append(
                Line(
                    f"And the internet over IPv{family}, for all their traffic goes through home (full tunnel).",
                    f"{word} saddr @tunnel{family} {way}accept",
                )
            )
    rules.append(Line("Nothing else; the device is told at once instead of waiting for an answer.", _REFUSE))
    return Block("What comes from devices.", "chain from_tunnel", rules)


def _to_tunnel() -> Block:
    return Block(
        "What goes to devices.",
        "chain to_tunnel",
        [
            Line(
                "Answers, and messages about the connections that devices began (a packet was too big, for instance: "
                "RFC 1191, RFC 8201).",
                "ct state established,related accept",
            ),
            Line("Nobody begins a connection to a device; whoever tries is told at once.", _REFUSE),
        ],
    )


def _passing(facts: HostFacts) -> Block:
    policy = "accept" if facts.forwards_for_others else "drop"
    rules: list[Part] = [Line(_POLICY[policy], f"type filter hook forward priority filter; policy {policy};")]
    inside = facts.tunnel_interface
    came_another_way = f'iifname != "{inside}"' if inside else "meta ipsec missing"
    goes_another_way = f'oifname != "{inside}"' if inside else "rt ipsec missing"
    for family in facts.families:
        word = _WORD[family]
        rules += [
            Line(
                f"An IPv{family} address of the tunnel that did not come through the tunnel is forged.",
                f"{came_another_way} {word} saddr @tunnel{family} drop",
            ),
            Line(
                f"What is for a device over IPv{family} goes through the tunnel or not at all, never in clear.",
                f"{goes_another_way} {word} daddr @tunnel{family} {_REFUSE}",
            ),
        ]
    return Block("The crossing: what is forwarded.", "chain passing", [*rules, *_jumps(facts)])


def _jumps(facts: HostFacts) -> list[Part]:
    from_told, to_told = "What comes from devices is judged above", "What goes to devices is judged above"
    if facts.tunnel_interface:
        return [
            Line(f"{from_told}.", f'iifname "{facts.tunnel_interface}" jump from_tunnel'),
            Line(f"{to_told}.", f'oifname "{facts.tunnel_interface}" jump to_tunnel'),
        ]
    jumps: list[Part] = []
    for family in facts.families:
        word = _WORD[family]
        jumps += [
            Line(f"{from_told}, over IPv{family}.", f"{word} saddr @tunnel{family} jump from_tunnel"),
            Line(f"{to_told}, over IPv{family}.", f"{word} daddr @tunnel{family} jump to_tunnel"),
        ]
    return jumps


def _segments(facts: HostFacts) -> Block:
    rules: list[Part] = [
        Line(
            "Looks at what is passed on, before the rules above do; it decides nothing.",
            "type filter hook forward priority mangle; policy accept;",
        )
    ]
    for family in facts.families:
        size = facts.mss(family)
        begins = "tcp flags & (syn | rst) == syn"
        lower = f"tcp option maxseg size > {size} tcp option maxseg size set {size}"
        rules += [
            Line(
                f"Where {who} begins or answers a TCP connection over IPv{family}, name segments that fit.",
                f"{_WORD[family]} {end} @tunnel{family} {begins} {lower}",
            )
            for who, end in (("a device", "saddr"), ("home", "daddr"))
        ]
    return Block(
        "The headers of the tunnel take room from every packet. TCP says at the beginning how large segments may be "
        "(maximum segment size, RFC 9293 section 3.7.1); a larger wish is lowered to what fits, so that nothing "
        "depends on messages about too big packets, which many networks swallow (RFC 2923 section 2.1).",
        "chain segments",
        rules,
    )


def _arriving(facts: HostFacts) -> Block:
    way = f'iifname "{facts.outer_interface}" ' if facts.outer_interface else ""
    return Block(
        "What is for this computer itself. The policy is accept, and there is no rule that drops: who may reach ssh "
        "and everything else here stays in the hands of the rules that were here before, and nobody is locked out. "
        "An accept ends this chain alone. So another table that drops these packets still drops them (nft(8)), and "
        f"has to let the same three through; the counters show whether they come this far: nft list table {TABLE}",
        "chain arriving",
        [
            Line("Looks at what is for this computer.", "type filter hook input priority filter; policy accept;"),
            Line(
                f"UDP {IKE_PORT}: devices and gateway agree on keys (RFC 7296 section 2). UDP {NAT_PORT}: the same, "
                "and the tunnel itself, for devices behind address translation (RFC 7296 section 2.23, RFC 3948).",
                f"{way}udp dport {{ {IKE_PORT}, {NAT_PORT} }} counter accept",
            ),
            Line(
                "ESP, IP protocol 50: the tunnel itself, for devices that are not (RFC 4303 section 2).",
                f"{way}meta l4proto esp counter accept",
            ),
        ],
    )


def _own_address(facts: HostFacts) -> Block:
    rules: list[Part] = [
        Line(
            "Looks at what leaves this computer, last of all.",
            "type nat hook postrouting priority srcnat; policy accept;",
        )
    ]
    for family in facts.families:
        word = _WORD[family]
        if facts.home(family):
            rules.append(
                Line(
                    f"At home, devices appear under the IPv{family} address of this computer, so that nothing there "
                    "needs to know the way to the tunnel.",
                    f"{word} saddr @tunnel{family} {word} daddr @home{family} masquerade",
                )
            )
        if facts.full:
            way = f'oifname "{facts.outer_interface}"' if facts.outer_interface else f"{word} daddr != @tunnel{family}"
            rules.append(
                Line(
                    f"On the internet too, over IPv{family}: their own addresses mean nothing there.",
                    f"{word} saddr @tunnel{family} {way} masquerade",
                )
            )
    return Block("Masquerading, as it was chosen.", "chain own_address", rules)


def _leaving(facts: HostFacts) -> Block:
    """Keep redirects in: the kernel spares only what came out of IPsec from them, not what goes into it.

    ip_forward in net/ipv4/ip_forward.c and ip6_forward in net/ipv6/ip6_output.c; IPv6 has no sysctl for it.
    """
    kinds = {4: ("icmp type redirect", "RFC 792"), 6: ("icmpv6 type nd-redirect", "RFC 4861 section 4.5")}
    return Block(
        "What this computer itself says. It may stand beside the router, not in front of it: an answer from home then "
        "comes in and goes out, encrypted, by the same interface, and a kernel that sees this tells home to take the "
        "shorter way, which would lead past the tunnel.",
        "chain leaving",
        [
            Line("Looks at what this computer sends.", "type filter hook output priority filter; policy accept;"),
            *(
                Line(
                    f"So it sends no such advice over IPv{family} ({kinds[family][1]}).",
                    f"{kinds[family][0]} counter drop",
                )
                for family in facts.families
            ),
        ],
    )
