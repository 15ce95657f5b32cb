"""A PowerShell script that sets a Windows laptop up from the PKCS#12 beside it, and takes all of it back with -Undo.

Cmdlets and their parameters: Microsoft's published reference (github.com/MicrosoftDocs/windows-powershell-docs, modules
PKI and VpnClient). The weak defaults of IKEv2 there, and the cure, are in Microsoft's own guidance (windows-itpro-docs,
"How to configure Diffie Hellman protocol over IKEv2 VPN connections"). Nothing here was run on Windows.
"""

from __future__ import annotations

import base64
import binascii
import re
from collections.abc import Sequence
from typing import NamedTuple

from hearthkey.core.bundle import Settings
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.names import file_stem
from hearthkey.core.network import FULL

_MARK = "\ufeff"
"""Windows PowerShell 5.1 reads a script without a byte order mark in the machine's old code page (from memory)."""

_QUOTES = "'\u2018\u2019\u201a\u201b"
"""What PowerShell takes for a single quote; doubled inside a single-quoted string it stands for itself (language
specification, section 2.3.5.2)."""

_GROUPS = {14: "Group14", 19: "ECP256", 20: "ECP384"}
_CIPHERS = {"ENCR_AES_CBC 256": ("AES256", "AES256"), "ENCR_AES_GCM_16 256": ("GCMAES256", "GCMAES256")}
"""By transform: for the IKE SA and for the ESP SA, as -EncryptionMethod and -CipherTransformConstants call it."""
_INTEGRITY = {"PRF_HMAC_SHA2_256": "SHA256", "PRF_HMAC_SHA2_384": "SHA384", "PRF_HMAC_SHA2_512": "SHA384"}
_PFS = {14: "PFS2048", 19: "ECP256", 20: "ECP384"}

_SCRIPT = """\
#Requires -RunAsAdministrator
# Sets {device_plain} up for {household_plain}. Read it first. Nobody signed it, so in a terminal that was opened as
# administrator, in the folder where this file and its PKCS#12 lie, it is started like this:
#   powershell -ExecutionPolicy Bypass -File .\\{name}
# Run it again at any time: what is there is brought up to date. -Undo after the name takes away the connection, the
# certificate with its key, and the CA certificate. There is no secret in this file.
# Not run: a grammar of PowerShell has read it, and nobody has run it on Windows yet.
[CmdletBinding()]
param([switch]$Undo)
$ErrorActionPreference = 'Stop'

$Name      = {household}
$Server    = {gateway}
$Container = Join-Path $PSScriptRoot {container}
$CaPrint   = {ca_print}
$Print     = {device_print}

function Find-One($Store, $Thumbprint) {{
    Get-ChildItem "Cert:\\LocalMachine\\$Store" | Where-Object {{ $_.Thumbprint -eq $Thumbprint }}
}}

if ($Undo) {{
    if (Get-VpnConnection -AllUserConnection -Name $Name -ErrorAction SilentlyContinue) {{
        Remove-VpnConnection -AllUserConnection -Name $Name -Force
    }}
    Find-One 'My' $Print | Remove-Item -DeleteKey
    Find-One 'Root' $CaPrint | Remove-Item{further_undo}
    Write-Host 'The connection, the certificate with its key and the CA certificate are gone.'
    return
}}

if (-not (Find-One 'My' $Print)) {{
    $Words = Read-Host -AsSecureString -Prompt 'The seven words, with a space between two of them'
    Import-PfxCertificate -FilePath $Container -CertStoreLocation 'Cert:\\LocalMachine\\My' -Password $Words | Out-Null
}}
if (-not (Find-One 'Root' $CaPrint)) {{
    $Ca = [System.Security.Cryptography.X509Certificates.X509Certificate2]::new(
        [Convert]::FromBase64String({ca_base64}))
    $Root = [System.Security.Cryptography.X509Certificates.X509Store]::new('Root', 'LocalMachine')
    $Root.Open('ReadWrite'); $Root.Add($Ca); $Root.Close()
}}{further}
if (Get-VpnConnection -AllUserConnection -Name $Name -ErrorAction SilentlyContinue) {{
    Set-VpnConnection -AllUserConnection -Name $Name -ServerAddress $Server -TunnelType Ikev2 `
        -AuthenticationMethod MachineCertificate -EncryptionLevel Required -SplitTunneling {splits} -Force
}} else {{
    Add-VpnConnection -AllUserConnection -Name $Name -ServerAddress $Server -TunnelType Ikev2 `
        -AuthenticationMethod MachineCertificate -EncryptionLevel Required{split}
}}
# What the system would choose by itself is 3DES, SHA-1 and group 2; its own documentation calls that not secure.
Set-VpnConnectionIPsecConfiguration -ConnectionName $Name -AllUserConnection -Force `
    -EncryptionMethod {ike_cipher} -IntegrityCheckMethod {integrity} -DHGroup {group} `
    -CipherTransformConstants {esp_cipher} -AuthenticationTransformConstants {esp_integrity} -PfsGroup {pfs}
{routes}
Write-Host 'Done. Connect to it in the network settings, away from the Wi-Fi at home.'
"""
_FURTHER = """
if (-not (Find-One 'Root' {ca_print})) {{
    $Ca = [System.Security.Cryptography.X509Certificates.X509Certificate2]::new(
        [Convert]::FromBase64String({ca_base64}))
    $Root = [System.Security.Cryptography.X509Certificates.X509Store]::new('Root', 'LocalMachine')
    $Root.Open('ReadWrite'); $Root.Add($Ca); $Root.Close()
}}"""
_FURTHER_UNDO = "\n    Find-One 'Root' {ca_print} | Remove-Item"
_ROUTE = """\
if ((Get-VpnConnection -AllUserConnection -Name $Name).Routes.DestinationPrefix -notcontains {prefix}) {{
    Add-VpnConnectionRoute -AllUserConnection -ConnectionName $Name -DestinationPrefix {prefix}
}}"""


def file_name(settings: Settings) -> str:
    """Name the script: "tomasz-laptop.ps1"."""
    return f"{file_stem(settings.device, settings.identity)}.ps1"


def write(
    settings: Settings,
    *,
    container_name: str,
    ca_base64: str,
    ca_print: str,
    device_print: str,
    further: Sequence[tuple[str, str]] = (),
) -> bytes:
    """Write the script: UTF-8 with a byte order mark, CRLF.

    Args:
        container_name: file name of the PKCS#12 beside it.
        ca_base64: the CA certificate, DER in base64.
        ca_print, device_print: SHA-1 of the two certificates, upper-case hex, by which Windows finds one again; nothing
            relies on its strength.
        further: base64 and SHA-1 of another CA that is to be trusted, while one follows the other.

    Raises:
        Bug: script-transform-unknown.
    """
    text = _SCRIPT.format(
        name=file_name(settings),
        device_plain=_in_comment(settings.device),
        household_plain=_in_comment(settings.household),
        household=quoted(settings.household),
        gateway=quoted(settings.gateway_host),
        container=quoted(container_name),
        ca_print=quoted(ca_print),
        device_print=quoted(device_print),
        ca_base64=quoted(ca_base64),
        further="".join(_FURTHER.format(ca_base64=quoted(one), ca_print=quoted(mark)) for one, mark in further),
        further_undo="".join(_FURTHER_UNDO.format(ca_print=quoted(mark)) for _, mark in further),
        split="" if settings.tunnel == FULL else " -SplitTunneling",
        splits="$false" if settings.tunnel == FULL else "$true",
        routes="\n".join(_ROUTE.format(prefix=quoted(one)) for one in _through(settings)),
        **_strength(settings),
    )
    return (_MARK + text).replace("\n", "\r\n").encode()


def is_one(data: bytes) -> bool:
    """Whether a file is such a script, by how it begins."""
    return data.startswith(f"{_MARK}#Requires -RunAsAdministrator".encode())


class Script(NamedTuple):
    """What a script says.

    Args:
        device_print: SHA-1 of the device's certificate, upper-case hex.
        authorities: the CA certificates that it trusts, DER, in their order.
        authority_prints: their SHA-1.
    """

    device_print: str
    authorities: tuple[bytes, ...]
    authority_prints: tuple[str, ...]


_BESIDE_IT = re.compile(r"^\$Container = Join-Path \$PSScriptRoot '[^\r\n]+'\r?$", re.MULTILINE)
_PRINTS = re.compile(r"^\$(CaPrint|Print) +=\s+'([0-9A-F]{40})'\r?$", re.MULTILINE)
_TRUSTED = re.compile(r"FromBase64String\('([A-Za-z0-9+/=]+)'\)")
_BESIDE = re.compile(r"^if \(-not \(Find-One 'Root' '([0-9A-F]{40})'\)\)", re.MULTILINE)


def read(data: bytes) -> Script:
    """Read a script of ours back, by its own lines and not by how it was put together.

    Raises:
        Refused: script-unreadable.
    """
    text = data.decode("utf-8-sig", "replace")
    prints = dict(_PRINTS.findall(text))
    try:
        trusted = tuple(base64.b64decode(one, validate=True) for one in _TRUSTED.findall(text))
    except binascii.Error:
        trusted = ()
    if len(_BESIDE_IT.findall(text)) != 1 or set(prints) != {"CaPrint", "Print"} or not trusted:
        raise Refused("script-unreadable")
    marks = (prints["CaPrint"], *_BESIDE.findall(text))
    return Script(prints["Print"], trusted, marks)


def quoted(text: str) -> str:
    """A text as a single-quoted string, in which nothing is looked for."""
    return "'" + "".join(one * 2 if one in _QUOTES else one for one in text) + "'"


def _in_comment(text: str) -> str:
    """A name in a comment must not end it."""
    return " ".join(text.split())


def _through(settings: Settings) -> tuple[str, ...]:
    return () if settings.tunnel == FULL else settings.home_subnets


def _strength(settings: Settings) -> dict[str, str]:
    try:
        ike = next(_CIPHERS[one][0] for one in settings.ike if one in _CIPHERS)
        esp = next(_CIPHERS[one][1] for one in settings.esp if one in _CIPHERS)
        integrity = next(_INTEGRITY[one] for one in settings.ike if one in _INTEGRITY)
        return {
            "ike_cipher": ike,
            "integrity": integrity,
            "group": _GROUPS[settings.key_exchange],
            "esp_cipher": esp,
            "esp_integrity": esp if esp.startswith("GCM") else "SHA256128",
            "pfs": _PFS[settings.key_exchange],
        }
    except (StopIteration, KeyError) as error:
        raise Bug("script-transform-unknown", seen=", ".join((*settings.ike, *settings.esp))) from error
