"""A linter of other hands reads every certificate and list of a household against RFC 5280.

Nothing at or above NOTICE is let through; the one INFO that it finds on each certificate says by which method of
section 4.2.1.2 the key identifier was made.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.interop.cottage import DEVICES, STAGES, Cottage

NAMES = ("authority", "gateway", *DEVICES)


def findings(linter: str, *words: str | Path) -> str:
    """What pkilint finds at or above NOTICE, one finding a line; its exit code is their number."""
    command = (sys.executable, "-m", f"pkilint.bin.{linter}", "lint", "-s", "NOTICE", "-f", "CSV", *words)
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    header, *found = done.stdout.strip().splitlines()
    assert header.startswith("node_path,"), done.stderr
    assert len(found) == done.returncode, done.stderr
    return "\n".join(found)


def certificate(quince: Cottage, name: str) -> Path:
    """The certificate of the authority, the gateway or a device."""
    return {"authority": quince.authority, "gateway": quince.gateway, **quince.certificates}[name]


@pytest.mark.parametrize("name", NAMES)
def test_certificates(quince: Cottage, name: str) -> None:
    """If this fails, a certificate breaks RFC 5280 somewhere that our own tests do not look."""
    assert findings("lint_pkix_cert", certificate(quince, name)) == ""


@pytest.mark.parametrize("name", NAMES)
def test_chains(quince: Cottage, name: str) -> None:
    """If this fails, a certificate and its issuer do not fit: names, key identifiers, dates."""
    assert findings("lint_pkix_signer_signee_cert_chain", quince.authority, certificate(quince, name)) == ""


@pytest.mark.parametrize("stage", STAGES)
def test_lists(quince: Cottage, stage: str) -> None:
    """If this fails, a list breaks RFC 5280 section 5; the first has no entries at all."""
    assert findings("lint_crl", "-p", "PKIX", "-t", "CRL", quince.lists[stage].with_suffix(".crl")) == ""


def test_the_linter_is_awake(quince: Cottage) -> None:
    """If this fails, the linter finds nothing because it looks at nothing: a device's certificate issued nobody."""
    device, *_ = quince.certificates.values()
    assert "pkix." in findings("lint_pkix_signer_signee_cert_chain", device, quince.gateway)
