"""What the check of the way in found, in three parts: what was seen, what it means, what to try next."""

from __future__ import annotations

PLACES: dict[str, str] = {
    "name": "The name is known",
    "address": "The address can be reached",
    "port-500": "Port 500 answers",
    "port-4500": "Port 4500 answers",
    "gateway": "It is a gateway",
    "proposals": "It speaks like your devices",
    "trust": "It trusts this household",
    "rewritten": "Addresses on the way",
    "front": "The web front answers",
    "front-tls": "The web front encrypts",
    "front-certificate": "The web front is yours",
    "front-asks": "The web front asks who is there",
    "front-in": "A device gets in there",
    "clock": "The gateway’s clock is right",
}

STOPS: dict[str, str] = {
    "name": "the name",
    "address": "the address",
    "port-500": "port 500",
    "port-4500": "port 4500",
    "gateway": "what answers there",
    "proposals": "how the gateway encrypts",
    "trust": "whom the gateway trusts",
    "rewritten": "the addresses on the way",
    "front": "the web front’s port",
    "front-tls": "how the web front encrypts",
    "front-certificate": "the web front’s certificate",
    "front-asks": "whom the web front asks for",
    "front-in": "whom the web front lets in",
    "clock": "the gateway’s clock",
}
"""How the headline calls the link that is to be looked at."""

VERDICTS: dict[str, str] = {"ok": "In order", "broken": "Broken", "unknown": "Not known"}

FINDINGS: dict[str, tuple[str, str, str]] = {
    # The name.
    "name-answers": ("{host} leads to {addresses}; answers may be kept for {ttl} seconds.", "", ""),
    "name-is-address": (
        "The household uses the bare address {host}.",
        "There is no name to look up. When the address changes, every device needs a new bundle.",
        "",
    ),
    "name-slow": (
        "{host} leads to {addresses}; answers may be kept for {ttl} seconds.",
        "If home’s address changes, devices may look in the old place for that long.",
        "At the name service, let answers be kept for 300 seconds at most.",
    ),
    "name-differs": (
        "{host} leads to {addresses}, but the router says that home is at {router}.",
        "Devices knock at somebody else’s door.",
        "Let the name service know of home’s new address, then check again.",
    ),
    "name-crowded": (
        "{host} has {count} addresses.",
        "A device picks one of them, and most are not home.",
        "At the name service, leave one address of each kind for this name.",
    ),
    "name-missing": (
        "No name server knows {host}.",
        "No device finds the way home.",
        "Look for a typing mistake, and whether the name at the name service has ended.",
    ),
    "name-empty": (
        "{host} exists, but has no address.",
        "No device finds the way home.",
        "At the name service, give the name home’s address.",
    ),
    "name-silent": (
        "No name server answered within {seconds} seconds.",
        "This laptop may have no internet just now; nothing is said about home.",
        "Open any web page. If that works, check again.",
    ),
    # The address.
    "address-fit": ("{addresses} can be reached from anywhere in principle.", "", ""),
    "address-private": (
        "{address} counts inside a home only.",
        "From outside nobody gets there.",
        "Give the name the address that the router’s own pages show for the internet.",
    ),
    "address-home": (
        "Here {host} leads to {address}, home’s own address.",
        "At home that is a short way. It does not show where the name leads outside.",
        "Check again from outside, for instance with the laptop on a phone’s mobile data.",
    ),
    "address-shared": (
        "{address} is shared by many customers of the provider (RFC 6598).",
        "What knocks there never reaches home, whatever the router forwards.",
        "Ask the provider for an IPv4 address of your own, or let the household use IPv6.",
    ),
    "address-behind": (
        "The router says that it is at {router}, which is a home address too.",
        "There is a second router before it, and that one has to forward as well.",
        "On the router that is nearer to the internet, forward the same ports to the other one.",
    ),
    "address-unfit": (
        "{address} is no address for a home.",
        "Nobody gets there.",
        "Give the name the address that the router’s own pages show for the internet.",
    ),
    "address-other-family": (
        "{addresses} is of IP version {family}, and this laptop has none of that just now.",
        "Nothing can be said from here, and devices in a network like this one do not get in.",
        "Check from another network, or give the name an address of the other version too.",
    ),
    "address-unasked": ("There is no address to ask about.", "", ""),
    # The ports.
    "port-answers": ("{address} answered on UDP port {port} after {milliseconds} ms.", "", ""),
    "port-silent": (
        "{packets} small packets to {address}, UDP port {port}, stayed without an answer.",
        "Something on the way keeps them: a router that forwards nothing, or elsewhere, or a firewall.",
        "Compare the router’s forwarding with the forwarding sheet: port, UDP, and the gateway’s address at home.",
    ),
    "port-silent-inside": (
        "{packets} small packets to {address}, UDP port {port}, stayed without an answer.",
        "Many routers lead nobody from inside back to their own door, so this says nothing about outside.",
        "Check again from outside, for instance with the laptop on a phone’s mobile data.",
    ),
    "port-refused": (
        "{address} said that nobody listens on UDP port {port}.",
        "Packets get to a computer, but not to a gateway that runs.",
        "See whether the gateway runs, and whether the router forwards to its address.",
    ),
    "port-unroutable": (
        "A network on the way said that {address}, UDP port {port}, cannot be reached.",
        "Packets get part of the way: the router may forward to an address at home that nothing has.",
        "See whether the router at home is on, and whether it forwards to the gateway’s address at home.",
    ),
    "port-partly": (
        "UDP port {port} answers at {address} and not at {other}.",
        "Devices that take the other address do not get in.",
        "Let the same port through for both, or take the address that does not answer off the name.",
    ),
    "not-reached": ("Nothing got this far, so nothing was seen.", "", ""),
    # The gateway.
    "gateway-answers": ("What answers at {address} speaks IKE, version 2.", "", ""),
    "gateway-other": (
        "Something at {address} answers, but it is no gateway.",
        "The ports lead to another device.",
        "See which device the router forwards to; the gateway’s address at home may have changed.",
    ),
    "gateway-older": (
        "What answers at {address} speaks IKE, version {version}.",
        "Your devices speak version 2, so none gets in.",
        "Switch version 2 on at the gateway, or see whether the ports lead to the right box.",
    ),
    "gateway-upset": (
        "The gateway at {address} answered with note {note}.",
        "It could not make anything of the question.",
        "Bring the gateway’s software up to date, then check again.",
    ),
    "proposals-taken": ("The gateway chose {chosen}.", "", ""),
    "proposals-refused": (
        "The gateway takes none of the ways to encrypt that your devices offer.",
        "Every device is turned away before it can say who it is.",
        "Deliver the household’s settings to the gateway, then check again.",
    ),
    "proposals-group": (
        "The gateway wants key exchange {group}, which your devices do not offer.",
        "Every device is turned away before it can say who it is.",
        "Deliver the household’s settings to the gateway, then check again.",
    ),
    "proposals-foreign": (
        "The gateway chose something that was never offered.",
        "It is not set up as the household’s settings say.",
        "Deliver the household’s settings to the gateway, then check again.",
    ),
    "trust-ours": ("The gateway asks for certificates of this household’s CA.", "", ""),
    "trust-others": (
        "The gateway asks for certificates of {count} CAs, and this household’s is not among them.",
        "It would turn every device of this household away.",
        "Deliver the household’s settings to the gateway. If it is somebody else’s box, mend the forwarding.",
    ),
    "trust-one-other": (
        "The gateway asks for certificates of one CA, and it is not this household’s.",
        "It would turn every device of this household away.",
        "Deliver the household’s settings to the gateway. If it is somebody else’s box, mend the forwarding.",
    ),
    "trust-unsaid": (
        "The gateway did not say whose certificates it takes.",
        "It need not say so; only a device that gets in shows it.",
        "Let one device prove that it gets in.",
    ),
    "rewritten-none": ("No address was changed on the way.", "", ""),
    "rewritten-here": ("This laptop’s address was changed on the way, as in most networks.", "", ""),
    "rewritten-there": ("The gateway stands behind a router that forwards to it.", "", ""),
    "rewritten-both": ("Both this laptop and the gateway stand behind routers that change addresses.", "", ""),
    "rewritten-unsaid": ("The gateway did not say how it sees the addresses.", "", ""),
    # The web front.
    "front-answers": ("{address} takes connections on TCP port {port}.", "", ""),
    "front-silent": (
        "{address} did not answer on TCP port {port}.",
        "The pages of the home cannot be reached.",
        "Compare the router’s forwarding with the forwarding sheet: TCP, and the gateway’s address at home.",
    ),
    "front-silent-inside": (
        "{address} did not answer on TCP port {port}.",
        "Many routers lead nobody from inside back to their own door, so this says nothing about outside.",
        "Check again from outside, for instance with the laptop on a phone’s mobile data.",
    ),
    "front-refused": (
        "{address} turned the connection on TCP port {port} down.",
        "Packets get to a computer, but no web front runs there.",
        "See whether the web front runs, and whether the router forwards to its address.",
    ),
    "tls-speaks": ("The web front speaks {version}.", "", ""),
    "tls-failed": (
        "What answers on TCP port {port} does not encrypt: {seen}.",
        "It is not the web front of the gateway pack.",
        "See which device the router forwards that port to.",
    ),
    "certificate-ours": ("Its certificate is signed by this household’s CA, for {host}, until {until}.", "", ""),
    "certificate-others": (
        "Its certificate is not signed by this household’s CA.",
        "Devices are warned, or turn away: it is another server, or one with another certificate.",
        "See which device the router forwards the port to; deliver the household’s settings to the gateway.",
    ),
    "certificate-ended": (
        "Its certificate ended, or has not begun: {seen}.",
        "Devices turn away.",
        "Deliver the household’s settings to the gateway and let the web front read them anew.",
    ),
    "certificate-name": (
        "Its certificate is this household’s, but not for {host}.",
        "Devices turn away, for they look for the name that they were told.",
        "Check the household’s own host name, or make the gateway’s certificate anew.",
    ),
    "asks-ours": ("It asks whoever comes for a certificate of this household.", "", ""),
    "asks-anybody": (
        "It asks whoever comes for a certificate, but does not say whose.",
        "It need not say so; only a device that gets in shows it.",
        "Let one device open the pages of the home.",
    ),
    "asks-others": (
        "It asks for certificates, but not for those of this household.",
        "It would turn every device of this household away.",
        "Deliver the household’s settings to the gateway and let the web front read them anew.",
    ),
    "asks-nobody": (
        "It lets anybody in without asking for a certificate.",
        "The pages of the home stand open to everybody.",
        "Close the port at the router now. Then deliver the settings and let the web front read them anew.",
    ),
    "in-opens": ("It let a device in whose bundle waits here: {device} ({person}).", "", ""),
    "in-refused": (
        "It turned a device away whose bundle waits here: {device} ({person}), {seen}.",
        "Other devices may be turned away too: its stop list or its clock may be old.",
        "Deliver the household’s settings to the gateway and let the web front read them anew.",
    ),
    "in-misnamed": (
        "It lets devices in, but does not answer to {host}.",
        "Instead of the page of the home, people see that something is wrong.",
        "Deliver the household’s settings to the gateway and let the web front read them anew.",
    ),
    "in-no-page": (
        "It let a device in, {device} ({person}), but the page behind it does not answer: {seen}.",
        "Instead of the page of the home, people see that something is wrong.",
        "See whether the page of the home runs, and whether the web front knows its address.",
    ),
    "in-untried": (
        "No bundle waits here that could be tried.",
        "Nothing is wrong with that.",
        "Let one device open the pages of the home.",
    ),
    # The clock.
    "clock-right": ("The web front’s clock and this laptop’s are {seconds} seconds apart.", "", ""),
    "clock-wrong": (
        "The web front’s clock and this laptop’s are {minutes} minutes apart.",
        "With a wrong clock a gateway takes new certificates for ones that have not begun, or ended ones for good.",
        "Set the clock of the one that is wrong, and let it be set by itself from now on.",
    ),
    "clock-untold": (
        "The gateway does not tell the time before somebody is let in.",
        "Nothing is wrong with that.",
        "If devices are turned away all the same, look at the gateway’s clock.",
    ),
}

HEADLINES: dict[str, str] = {
    "broken-outside": "From outside the way in stops here: {place}.",
    "broken-inside": "Even from inside the way in stops here: {place}.",
    "broken-nowhere": "The way in stops here: {place}.",
    "good-outside": "From outside there is a way in, up to the gateway.",
    "good-inside": "From inside the gateway answers. That does not show that it does from outside.",
    "open-outside": "From outside it stays open whether there is a way in. First to look at: {place}.",
    "open-inside": "From inside this cannot be told. First to look at: {place}.",
    "open-nowhere": "This laptop found no way to the gateway’s address, so nothing is said about home.",
}

SIDES: dict[str, str] = {
    "inside": "Checked from inside: this laptop was at home, or in the tunnel.",
    "outside": "Checked from outside: this laptop’s address was not one of home.",
    "nowhere": "This laptop had no way to the address.",
}
