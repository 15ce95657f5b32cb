"""Kinds of devices, key sets and containers: what a householder can choose without knowing algorithms."""

from __future__ import annotations

import pytest

from hearthkey.core import keysets, kinds
from hearthkey.core.errors import Refused
from tests.fakes.kinds import KINDS


def test_every_kind_has_a_key_set_a_container_and_a_reason() -> None:
    """Broken if it fails: "which phone is it?" leads nowhere."""
    for kind in KINDS:
        assert KINDS.find(kind.name) is kind
        assert keysets.key_set(kind.key_set.name) is kind.key_set
        assert kinds.container(kind.container) == kind.container
        assert kind.why().endswith(".")


def test_suite_384_is_what_its_name_promises() -> None:
    """Broken if it fails: a named suite with other values (RFC 9206 section 5.1: AES-256-GCM, SHA2-512, P-384)."""
    suite = keysets.SUITE_384
    assert (suite.key_type, suite.key_exchange) == ("P-384", 20)
    assert suite.ike == ("ENCR_AES_GCM_16 256", "PRF_HMAC_SHA2_512")
    assert suite.esp == ("ENCR_AES_GCM_16 256",)


@pytest.mark.parametrize(
    ("look", "code"),
    [
        (KINDS.find, "kind-unknown"),
        (keysets.key_set, "key-set-unknown"),
        (kinds.container, "container-unknown"),
    ],
)
def test_what_is_unknown_is_refused_with_what_is_known(look: object, code: str) -> None:
    """Broken if it fails: a slip of the finger becomes a key of some other type."""
    assert callable(look)
    with pytest.raises(Refused) as refused:
        look("x" * 100)
    assert refused.value.code == code
    assert refused.value.facts["text"] == "x" * 40
