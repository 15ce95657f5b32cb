"""How a server is set up."""

class Adjustments:
    threads: int
    def __init__(self, **kw: object) -> None: ...
