"""The paths of NIST PKITS that a household's judge has to get right, with their published verdicts.

Source: NIST, Public Key Interoperability Test Suite (PKITS), Certification Path Validation, version
1.0.1 (the number from memory), sections 4.1 to 4.7 and 4.16. The verdict of a path stands in the name
of its end certificate; the code beside it is ours. Which list belongs to which path is told by the
names of the files.

Left out: 4.1.4 to 4.1.6 (DSA, which nobody here signs with); 4.5 (self-issued key changes, some of which
need a list under another key); of 4.6 and 4.7 what repeats a case that is in; 4.8 to 4.12 (policies) and
4.13 (name constraints), which a household never issues; 4.14 and 4.15 (distribution points, delta lists).
"""

from __future__ import annotations

from pathlib import Path
from typing import NamedTuple

import cryptography_vectors

FOLDER = Path(cryptography_vectors.__file__).parent / "x509" / "PKITS_data"
UNTRUSTED, MALFORMED = "path-untrusted", "path-malformed"


class Path4(NamedTuple):
    """One test.

    Args:
        number: section of PKITS.
        end: name of the end certificate, without "EE".
        authorities: intermediate certificates, from the one below the anchor down.
        lists: revocation lists beside the anchor's.
        code: what it has to be refused for, or None where it is valid.
    """

    number: str
    end: str
    authorities: tuple[str, ...]
    lists: tuple[str, ...]
    code: str | None


def _one(number: str, end: str, name: str, code: str | None, lists: tuple[str, ...] | None = None) -> Path4:
    """A path with one intermediate CA, whose list is named like it."""
    return Path4(number, end, (f"{name}CACert",), (f"{name}CACRL",) if lists is None else lists, code)


def certificate(name: str) -> bytes:
    """DER of a certificate."""
    return (FOLDER / "certs" / f"{name}.crt").read_bytes()


def revocation_list(name: str) -> bytes:
    """DER of a list."""
    return (FOLDER / "crls" / f"{name}.crl").read_bytes()


_P0, _P6 = "pathLenConstraint0", "pathLenConstraint6"
_LENGTH = ("InvalidpathLenConstraintTest", "ValidpathLenConstraintTest")

PATHS = (
    _one("4.1.1", "ValidCertificatePathTest1", "Good", None),
    _one("4.1.2", "InvalidCASignatureTest2", "BadSigned", UNTRUSTED),
    _one("4.1.3", "InvalidEESignatureTest3", "Good", UNTRUSTED),
    _one("4.2.1", "InvalidCAnotBeforeDateTest1", "BadnotBeforeDate", "certificate-not-yet"),
    _one("4.2.2", "InvalidEEnotBeforeDateTest2", "Good", "certificate-not-yet"),
    _one("4.2.3", "Validpre2000UTCnotBeforeDateTest3", "Good", None),
    _one("4.2.4", "ValidGeneralizedTimenotBeforeDateTest4", "Good", None),
    _one("4.2.5", "InvalidCAnotAfterDateTest5", "BadnotAfterDate", "certificate-ended"),
    _one("4.2.6", "InvalidEEnotAfterDateTest6", "Good", "certificate-ended"),
    _one("4.2.7", "Invalidpre2000UTCEEnotAfterDateTest7", "Good", "certificate-ended"),
    _one("4.2.8", "ValidGeneralizedTimenotAfterDateTest8", "Good", None),
    _one("4.3.1", "InvalidNameChainingTest1", "Good", UNTRUSTED),
    _one("4.3.2", "InvalidNameChainingOrderTest2", "NameOrdering", UNTRUSTED, ("NameOrderCACRL",)),
    _one("4.3.3", "ValidNameChainingWhitespaceTest3", "Good", None),
    _one("4.3.4", "ValidNameChainingWhitespaceTest4", "Good", None),
    _one("4.3.5", "ValidNameChainingCapitalizationTest5", "Good", None),
    _one("4.3.6", "ValidNameUIDsTest6", "UID", None),
    _one("4.3.7", "ValidRFC3280MandatoryAttributeTypesTest7", "RFC3280MandatoryAttributeTypes", None),
    _one("4.3.8", "ValidRFC3280OptionalAttributeTypesTest8", "RFC3280OptionalAttributeTypes", None),
    _one("4.3.9", "ValidUTF8StringEncodedNamesTest9", "UTF8StringEncodedNames", None),
    _one(
        "4.3.10",
        "ValidRolloverfromPrintableStringtoUTF8StringTest10",
        "RolloverfromPrintableStringtoUTF8String",
        None,
    ),
    _one("4.3.11", "ValidUTF8StringCaseInsensitiveMatchTest11", "UTF8StringCaseInsensitiveMatch", None),
    _one("4.4.1", "InvalidMissingCRLTest1", "NoCRL", "list-missing", ()),
    Path4(
        "4.4.2",
        "InvalidRevokedCATest2",
        ("GoodCACert", "RevokedsubCACert"),
        ("GoodCACRL", "RevokedsubCACRL"),
        "certificate-revoked",
    ),
    _one("4.4.3", "InvalidRevokedEETest3", "Good", "certificate-revoked"),
    _one("4.4.4", "InvalidBadCRLSignatureTest4", "BadCRLSignature", "list-untrusted"),
    _one("4.4.5", "InvalidBadCRLIssuerNameTest5", "BadCRLIssuerName", "list-missing"),
    _one("4.4.6", "InvalidWrongCRLTest6", "WrongCRL", "list-missing"),
    _one("4.4.7", "ValidTwoCRLsTest7", "TwoCRLs", None, ("TwoCRLsCAGoodCRL", "TwoCRLsCABadCRL")),
    _one("4.4.8", "InvalidUnknownCRLEntryExtensionTest8", "UnknownCRLEntryExtension", "list-untrusted"),
    _one("4.4.9", "InvalidUnknownCRLExtensionTest9", "UnknownCRLExtension", "list-untrusted"),
    _one("4.4.10", "InvalidUnknownCRLExtensionTest10", "UnknownCRLExtension", "list-untrusted"),
    _one("4.4.11", "InvalidOldCRLnextUpdateTest11", "OldCRLnextUpdate", "list-overdue"),
    _one("4.4.12", "Invalidpre2000CRLnextUpdateTest12", "pre2000CRLnextUpdate", "list-overdue"),
    _one("4.4.13", "ValidGeneralizedTimeCRLnextUpdateTest13", "GeneralizedTimeCRLnextUpdate", None),
    _one("4.4.14", "ValidNegativeSerialNumberTest14", "NegativeSerialNumber", None),
    _one("4.4.15", "InvalidNegativeSerialNumberTest15", "NegativeSerialNumber", "certificate-revoked"),
    _one("4.4.16", "ValidLongSerialNumberTest16", "LongSerialNumber", None),
    _one("4.4.17", "ValidLongSerialNumberTest17", "LongSerialNumber", None),
    _one("4.4.18", "InvalidLongSerialNumberTest18", "LongSerialNumber", "certificate-revoked"),
    _one("4.6.1", "InvalidMissingbasicConstraintsTest1", "MissingbasicConstraints", UNTRUSTED),
    _one("4.6.2", "InvalidcAFalseTest2", "basicConstraintsCriticalcAFalse", UNTRUSTED),
    _one("4.6.3", "InvalidcAFalseTest3", "basicConstraintsNotCriticalcAFalse", UNTRUSTED),
    _one("4.6.4", "ValidbasicConstraintsNotCriticalTest4", "basicConstraintsNotCritical", None),
    Path4(
        "4.6.5",
        _LENGTH[0] + "5",
        (_P0 + "CACert", _P0 + "subCACert"),
        (_P0 + "CACRL", _P0 + "subCACRL"),
        UNTRUSTED,
    ),
    Path4(
        "4.6.6",
        _LENGTH[0] + "6",
        (_P0 + "CACert", _P0 + "subCACert"),
        (_P0 + "CACRL", _P0 + "subCACRL"),
        UNTRUSTED,
    ),
    _one("4.6.7", _LENGTH[1] + "7", _P0, None),
    _one("4.6.8", _LENGTH[1] + "8", _P0, None),
    Path4(
        "4.6.9",
        _LENGTH[0] + "9",
        (_P6 + "CACert", _P6 + "subCA0Cert", _P6 + "subsubCA00Cert"),
        (_P6 + "CACRL", _P6 + "subCA0CRL", _P6 + "subsubCA00CRL"),
        UNTRUSTED,
    ),
    Path4(
        "4.6.13",
        _LENGTH[1] + "13",
        (_P6 + "CACert", _P6 + "subCA4Cert", _P6 + "subsubCA41Cert", _P6 + "subsubsubCA41XCert"),
        (_P6 + "CACRL", _P6 + "subCA4CRL", _P6 + "subsubCA41CRL", _P6 + "subsubsubCA41XCRL"),
        None,
    ),
    Path4(
        "4.6.15",
        "ValidSelfIssuedpathLenConstraintTest15",
        (_P0 + "CACert", _P0 + "SelfIssuedCACert"),
        (_P0 + "CACRL",),
        None,
    ),
    _one("4.7.1", "InvalidkeyUsageCriticalkeyCertSignFalseTest1", "keyUsageCriticalkeyCertSignFalse", UNTRUSTED),
    _one("4.7.2", "InvalidkeyUsageNotCriticalkeyCertSignFalseTest2", "keyUsageNotCriticalkeyCertSignFalse", UNTRUSTED),
    _one("4.7.3", "ValidkeyUsageNotCriticalTest3", "keyUsageNotCritical", None),
    _one("4.7.4", "InvalidkeyUsageCriticalcRLSignFalseTest4", "keyUsageCriticalcRLSignFalse", "list-untrusted"),
    _one("4.7.5", "InvalidkeyUsageNotCriticalcRLSignFalseTest5", "keyUsageNotCriticalcRLSignFalse", "list-untrusted"),
    Path4("4.16.1", "ValidUnknownNotCriticalCertificateExtensionTest1", (), (), None),
    Path4("4.16.2", "InvalidUnknownCriticalCertificateExtensionTest2", (), (), MALFORMED),
)
