from fontTools.ttLib import TTFont

class Options:
    layout_features: list[str]
    hinting: bool
    notdef_outline: bool

class Subsetter:
    def __init__(self, options: Options) -> None: ...
    def populate(self, *, text: str) -> None: ...
    def subset(self, font: TTFont) -> None: ...
