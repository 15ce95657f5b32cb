"""The shape of pyzipper 0.4 as far as hearthkey uses it; the package carries no types of its own."""

from collections.abc import Mapping
from os import PathLike
from typing import IO, Literal
from zipfile import ZipFile
from zipfile import ZipInfo as ZipInfo

from pyzipper import zipfile_aes as zipfile_aes
from pyzipper.zipfile_aes import AESZipInfo

ZIP_STORED: int
ZIP_DEFLATED: int
ZIP_BZIP2: int
ZIP_LZMA: int
WZ_AES: str

class BadZipFile(Exception): ...
class LargeZipFile(Exception): ...

class AESZipFile(ZipFile):
    zipinfo_cls: type[AESZipInfo]

    def __init__(
        self,
        file: str | PathLike[str] | IO[bytes],
        mode: Literal["r", "w", "x", "a"] = "r",
        compression: int = ...,
        allowZip64: bool = True,
        compresslevel: int | None = None,
        *,
        encryption: str | None = None,
        encryption_kwargs: Mapping[str, int] | None = None,
    ) -> None: ...
    def infolist(self) -> list[AESZipInfo]: ...  # type: ignore[override]
    def setencryption(self, encryption: str | None, **kwargs: int) -> None: ...
