"""What a gateway offers: transforms, their numbers, and what two RFCs refuse."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import BROAD, COMPACT, KEY_SETS, SUITE_384, KeySet
from hearthkey.core.proposals import NO_GROUP, Proposal, check, offered, proposals
from hearthkey.core.transforms import Kind, Protocol, Transform, group, transform

IKE, ESP = Protocol.IKE, Protocol.ESP


def told(key_set: KeySet, protocol: Protocol) -> list[list[str]]:
    """The proposals of a key set for one protocol, in words."""
    return [
        [f"{part} ({part.number})" for part in one.transforms if part.kind is not Kind.ESN]
        for one in proposals(key_set)
        if one.protocol is protocol
    ]


def proposal(protocol: Protocol, *names: str, groups: tuple[int, ...] = ()) -> Proposal:
    """A proposal made by hand."""
    return Proposal(protocol, (*map(transform, names), *map(group, groups)))


@pytest.mark.parametrize(
    ("name", "kind", "number"),
    [
        ("ENCR_3DES", Kind.ENCR, 3),  # RFC 7296 section 3.3.2
        ("ENCR_AES_CBC 256", Kind.ENCR, 12),  # RFC 7296 section 3.3.2
        ("ENCR_AES_GCM_16 256", Kind.ENCR, 20),  # RFC 4106 section 8
        ("ENCR_CHACHA20_POLY1305", Kind.ENCR, 28),  # RFC 7634
        ("PRF_HMAC_SHA2_256", Kind.PRF, 5),  # RFC 4868
        ("PRF_HMAC_SHA2_384", Kind.PRF, 6),
        ("PRF_HMAC_SHA2_512", Kind.PRF, 7),
        ("AUTH_HMAC_SHA2_256_128", Kind.INTEG, 12),  # RFC 4868 (the numbers 12 to 14 from memory)
        ("AUTH_HMAC_SHA2_384_192", Kind.INTEG, 13),
        ("AUTH_HMAC_SHA2_512_256", Kind.INTEG, 14),
    ],
)
def test_transforms_have_their_iana_numbers(name: str, kind: Kind, number: int) -> None:
    """Broken if it fails: somebody who looks for the number sets something else."""
    found = transform(name)
    assert (str(found), found.kind, found.number) == (name, kind, number)


def test_compact_is_what_it_says() -> None:
    """Broken if it fails: a device with the set "compact" and the gateway do not agree."""
    assert told(COMPACT, IKE) == [
        ["ENCR_AES_GCM_16 256 (20)", "PRF_HMAC_SHA2_256 (5)", "256-bit random ECP group (19)"]
    ]
    assert told(COMPACT, ESP) == [["ENCR_AES_GCM_16 256 (20)", "256-bit random ECP group (19)", "NONE (0)"]]


def test_broad_takes_old_and_new_devices() -> None:
    """Broken if it fails: a phone that knows group 14 and AES-CBC alone stays outside, or the others get no better."""
    groups = ["256-bit random ECP group (19)", "2048-bit MODP Group (14)"]
    assert told(BROAD, IKE) == [
        ["ENCR_AES_GCM_16 256 (20)", "PRF_HMAC_SHA2_256 (5)", *groups],
        ["ENCR_AES_CBC 256 (12)", "AUTH_HMAC_SHA2_256_128 (12)", "PRF_HMAC_SHA2_256 (5)", *groups],
    ]
    assert told(BROAD, ESP) == [
        ["ENCR_AES_GCM_16 256 (20)", *groups, "NONE (0)"],
        ["ENCR_AES_CBC 256 (12)", "AUTH_HMAC_SHA2_256_128 (12)", *groups, "NONE (0)"],
    ]


def test_the_suite_offers_its_own_values_alone() -> None:
    """Broken if it fails: what bears the name of RFC 9206 section 5.1 is not that suite."""
    assert told(SUITE_384, IKE) == [
        ["ENCR_AES_GCM_16 256 (20)", "PRF_HMAC_SHA2_512 (7)", "384-bit random ECP group (20)"]
    ]
    assert told(SUITE_384, ESP) == [["ENCR_AES_GCM_16 256 (20)", "384-bit random ECP group (20)"]]


@pytest.mark.parametrize("key_set", KEY_SETS.values(), ids=lambda one: one.name)
def test_a_gateway_takes_what_bundles_tell_devices(key_set: KeySet) -> None:
    """Broken if it fails: a device is set up as its bundle says, and the gateway refuses it."""
    for protocol, names in ((IKE, key_set.ike), (ESP, key_set.esp)):
        assert any(
            set(map(transform, names)) <= set(one.transforms) and key_set.key_exchange in one.groups
            for one in proposals(key_set)
            if one.protocol is protocol
        )


@given(st.sets(st.sampled_from(sorted(KEY_SETS))))
def test_what_is_offered_to_all_holds_what_is_offered_to_each(names: set[str]) -> None:
    """Broken if it fails: adding a laptop locks the phones out, or says the same thing twice."""
    merged = offered(KEY_SETS[name] for name in names)
    for name in names:
        for one in proposals(KEY_SETS[name]):
            assert any(
                set(one.transforms) <= set(other.transforms) and one.protocol is other.protocol for other in merged
            )
    bare = [(one.protocol, tuple(part for part in one.transforms if part.kind is not Kind.KE)) for one in merged]
    assert len(bare) == len(set(bare))
    assert [one.protocol for one in merged] == sorted(one.protocol for one in merged)
    for one in merged:
        check(one)
        assert NO_GROUP not in one.groups[:-1]
        assert one.encryption.bits == 256  # RFC 8784 section 6: an extra secret is worth no more than the cipher


GOOD_IKE = ("ENCR_AES_CBC 256", "AUTH_HMAC_SHA2_256_128", "PRF_HMAC_SHA2_256")
GOOD_ESP = ("ENCR_AES_CBC 256", "AUTH_HMAC_SHA2_256_128", "No Extended Sequence Numbers")


@pytest.mark.parametrize(
    ("protocol", "names", "groups", "level"),
    [
        (IKE, ("ENCR_DES", *GOOD_IKE[1:]), (14,), "MUST NOT"),  # RFC 8247 section 2.1
        (IKE, ("ENCR_NULL", *GOOD_IKE[1:]), (14,), "MUST NOT"),  # RFC 8247 section 2.1
        (IKE, (*GOOD_IKE[:2], "PRF_HMAC_MD5"), (14,), "MUST NOT"),  # RFC 8247 section 2.2
        (IKE, (GOOD_IKE[0], "AUTH_HMAC_MD5_96", GOOD_IKE[2]), (14,), "MUST NOT"),  # RFC 8247 section 2.3
        (IKE, (GOOD_IKE[0], "AUTH_DES_MAC", GOOD_IKE[2]), (14,), "MUST NOT"),  # RFC 8247 section 2.3
        (IKE, (GOOD_IKE[0], "AUTH_KPDK_MD5", GOOD_IKE[2]), (14,), "MUST NOT"),  # RFC 8247 section 2.3
        (IKE, GOOD_IKE, (14, 1), "MUST NOT"),  # RFC 8247 section 2.4
        (IKE, GOOD_IKE, (22,), "MUST NOT"),  # RFC 8247 section 2.4
        (IKE, GOOD_IKE, (2,), "SHOULD NOT"),  # RFC 8247 section 2.4
        (IKE, GOOD_IKE, (5,), "SHOULD NOT"),  # RFC 8247 section 2.4
        (IKE, GOOD_IKE, (23,), "SHOULD NOT"),  # RFC 8247 section 2.4
        (IKE, GOOD_IKE, (24,), "SHOULD NOT"),  # RFC 8247 section 2.4
        (ESP, ("ENCR_DES", *GOOD_ESP[1:]), (), "MUST NOT"),  # RFC 8221 section 5
        (ESP, ("ENCR_BLOWFISH", *GOOD_ESP[1:]), (), "MUST NOT"),  # RFC 8221 section 5
        (ESP, ("ENCR_DES_IV64", *GOOD_ESP[1:]), (), "MUST NOT"),  # RFC 8221 section 5 (from memory)
        (ESP, ("ENCR_3DES", *GOOD_ESP[1:]), (), "SHOULD NOT"),  # RFC 8221 section 5
        (ESP, (GOOD_ESP[0], "AUTH_HMAC_MD5_96", GOOD_ESP[2]), (), "MUST NOT"),  # RFC 8221 section 6
        (ESP, GOOD_ESP, (1,), "MUST NOT"),  # RFC 8247 section 2.4
    ],
)
def test_what_the_standards_forbid_is_refused(
    protocol: Protocol, names: tuple[str, ...], groups: tuple[int, ...], level: str
) -> None:
    """Broken if it fails: a household offers what two RFCs say nobody may, or should, offer."""
    with pytest.raises(Refused) as refused:
        check(proposal(protocol, *names, groups=groups))
    assert (refused.value.code, refused.value.facts["level"]) == ("transform-forbidden", level)


@pytest.mark.parametrize(
    ("made", "code"),
    [
        (proposal(IKE, "ENCR_AES_GCM_16 256", "PRF_HMAC_SHA2_256"), "proposal-incomplete"),
        (proposal(IKE, "ENCR_AES_GCM_16 256", groups=(19,)), "proposal-incomplete"),
        (proposal(IKE, "ENCR_AES_GCM_16 256", "PRF_HMAC_SHA2_256", groups=(19, 0)), "proposal-incomplete"),
        (proposal(ESP, "ENCR_AES_GCM_16 256"), "proposal-incomplete"),
        (proposal(IKE, "ENCR_AES_CBC 256", "PRF_HMAC_SHA2_256", groups=(14,)), "proposal-unprotected"),
        (proposal(ESP, "ENCR_AES_CBC 256", "No Extended Sequence Numbers"), "proposal-unprotected"),
        (proposal(ESP, "ENCR_NULL", *GOOD_ESP[1:]), "proposal-readable"),
        (proposal(ESP, "ENCR_AES_GCM_16 256", *GOOD_ESP[1:]), "proposal-integrity-twice"),
        (
            proposal(ESP, "ENCR_AES_GCM_16 256", "ENCR_AES_CBC 256", "No Extended Sequence Numbers"),
            "proposal-integrity-twice",
        ),
    ],
)
def test_a_proposal_that_cannot_work_is_refused(made: Proposal, code: str) -> None:
    """Broken if it fails: devices agree to nothing, or to something that protects nothing.

    Source: RFC 7296 section 3.3.3, RFC 5282 section 8, RFC 8221 section 4.
    """
    with pytest.raises(Refused) as refused:
        check(made)
    assert refused.value.code == code


def test_a_key_set_with_something_forbidden_makes_no_proposal() -> None:
    """Broken if it fails: the check stands beside the way and not on it."""
    with pytest.raises(Refused) as refused:
        proposals(replace(COMPACT, name="own", key_exchange=2))
    assert refused.value.code == "transform-forbidden"


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("ENCR_AES_GCM_16", "transform-key-length"),
        ("ENCR_AES_GCM_16 512", "transform-key-length"),
        ("ENCR_AES_GCM_16 0256", "transform-key-length"),
        ("ENCR_AES_GCM_16 ²56", "transform-key-length"),
        ("ENCR_CHACHA20_POLY1305 256", "transform-key-length"),  # RFC 7634 section 2: no Key Length attribute
        ("ENCR_ROT13", "transform-unknown"),
        ("", "transform-unknown"),
    ],
)
def test_odd_transforms_are_refused(text: str, code: str) -> None:
    """Broken if it fails: a slip in a name or a key length becomes a weaker tunnel (RFC 7296 section 3.3.5)."""
    with pytest.raises(Refused) as refused:
        transform(text)
    assert refused.value.code == code


def test_an_unknown_group_is_refused() -> None:
    """Broken if it fails: a number without meaning reaches the sheet."""
    with pytest.raises(Refused) as refused:
        group(99)
    assert refused.value.code == "transform-unknown"


def test_a_transform_without_key_length_is_written_without() -> None:
    """Broken if it fails: the sheet shows a key length of nothing."""
    assert str(Transform(Kind.PRF, "PRF_HMAC_SHA2_256", 5)) == "PRF_HMAC_SHA2_256"
