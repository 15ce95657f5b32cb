"""`hearthkey found`."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.household import FILE, KEYRING
from hearthkey.core.network import Caution
from hearthkey.core.sentences import plans
from hearthkey.services.founding import FoundRequest
from hearthkey.services.house import House


def request_of(arguments: Namespace) -> FoundRequest:
    """What was said of the household."""
    return FoundRequest(
        name=arguments.name,
        gateway_host=arguments.gateway_host,
        home_subnets=arguments.home_subnet,
        tunnel_subnet=arguments.tunnel_subnet,
        identity_suffix=arguments.identity_suffix,
        dns_servers=arguments.dns_server,
        tunnel=arguments.tunnel,
        gateway_key_set=arguments.gateway_key_set,
        practice=arguments.practice,
    )


def found_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Found a household."""
    plan = house.founding.preview(request_of(arguments))
    cautions = [*plan.cautions, Caution("local-law", "")]
    if arguments.key_file:
        cautions.append(Caution("kept-in-files", str(house.data / "keys")))
    told = str(plans.found(plan))
    if arguments.plan:
        teller.cautions(cautions)
        teller.result([told], {"plan": told, "cautions": [one.code for one in cautions]})
        return
    teller.aside(told)
    teller.cautions(cautions)
    if not arguments.yes and arguments.passphrase_file is None:
        asking.agree(arguments, teller, "Found it?")
    secret = asking.new_passphrase(house, arguments, teller)
    changes = house.founding.apply(plan, secret, progress=teller.progress)
    files, not_written = house.listing.publish_or_say(house.listing.numbered(None))
    teller.cautions(not_written)
    house.sealing.make_ready(secret)
    teller.cautions([Caution("write-it-down", str(house.data / "sealed"))])
    authority = house.register.authority()
    teller.result(
        [changes.sentence, "Next: hearthkey add PERSON DEVICE --kind KIND"],
        {
            "household": plan.household.certified_name,
            "gateway_host": plan.household.gateway_host,
            "identity_suffix": plan.household.identity_suffix,
            "tunnel_subnet": str(plan.household.tunnel_subnet),
            "authority_sha256": "" if authority is None else authority.fingerprint,
            "kept_in": FILE if arguments.key_file else KEYRING,
            "files": files,
        },
    )
