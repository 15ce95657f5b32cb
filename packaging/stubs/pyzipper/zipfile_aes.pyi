"""The entries of a pyzipper archive, with what the AES extra field says."""

from zipfile import ZipInfo

WZ_AES_V1: int
WZ_AES_V2: int

class AESZipInfo(ZipInfo):
    wz_aes_version: int | None
    wz_aes_vendor_id: bytes | None
    wz_aes_strength: int | None
