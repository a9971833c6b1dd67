"""A certificate authority of the desk's own, and the certificate that its pages are served under.

The authority (RFC 5280, ten years) is made on the first start, in the data folder, its key readable by the
owner alone. It may speak for this machine's names and for addresses of private networks only (name
constraints, RFC 5280 4.2.1.10): a phone that trusts it trusts it for nothing else. The certificate lasts 397
days and is made anew when a month of it is left or the machine has other names.
"""

import os
import secrets
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from ipaddress import ip_address, ip_network
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    load_pem_private_key,
)
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

_LASTS = timedelta(days=3650)
_LEAF_LASTS = timedelta(days=397)
_LEFT = timedelta(days=30)
_EARLIER = timedelta(days=1)  # a phone whose clock is behind
# Private and link-local networks: RFC 1918, RFC 3927, RFC 4193, RFC 4291; loopback.
_NETWORKS = (
    "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16", "127.0.0.0/8",
    "::1/128", "fc00::/7", "fe80::/10",
)  # fmt: skip
_ZONES = ("localhost", "local", "lan", "internal", "home.arpa")  # RFC 6761, RFC 6762, RFC 8375; common use


@dataclass(frozen=True, slots=True)
class Authority:
    """Where the authority's and the served certificate stand, and the names that could not be taken in."""

    certificate: Path
    served: Path
    left_out: tuple[str, ...]

    @property
    def fingerprint(self) -> str:
        """SHA-256 of the authority's certificate, as phones show it."""
        held = x509.load_pem_x509_certificate(self.certificate.read_bytes())
        return held.fingerprint(hashes.SHA256()).hex(":").upper()


def keep_authority(folder: Path, names: Sequence[str], *, now: datetime) -> Authority:
    """The authority in ``folder`` and a certificate for ``names`` (names and addresses), made where need be.

    Raises OSError where the folder cannot be written, ValueError where what stands there is no certificate
    or key.
    """
    folder.mkdir(parents=True, exist_ok=True, mode=0o700)
    held, key_file = folder / "authority.crt", folder / "authority.key"
    if not (held.exists() and key_file.exists()):
        _begin(held, key_file, names, now)
    authority = x509.load_pem_x509_certificate(held.read_bytes())
    taken = tuple(n for n in names if _within(authority, n))
    served = folder / "served.pem"
    if not _still_good(served, authority, taken, now):
        _write(served, _leaf(authority, _key_of(key_file), taken, now))
    return Authority(held, served, tuple(n for n in names if n not in taken))


def _begin(held: Path, key_file: Path, names: Sequence[str], now: datetime) -> None:
    key = ec.generate_private_key(ec.SECP256R1())
    own = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, f"Secondfix desk {secrets.token_hex(3)}")])
    allowed = [_general(n) for n in (*_NETWORKS, *_ZONES)]
    allowed += [_general(n) for n in names if not any(_covers(a, n) for a in allowed)]
    made = (
        _builder(own, own, now, _LASTS)
        .public_key(key.public_key())
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(signs_others=True), critical=True)
        .add_extension(
            x509.NameConstraints(permitted_subtrees=allowed, excluded_subtrees=None), critical=True
        )
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    _write(key_file, _pem(key))
    _write(held, made.public_bytes(Encoding.PEM))


def _leaf(
    authority: x509.Certificate, signing: ec.EllipticCurvePrivateKey, names: Sequence[str], now: datetime
) -> bytes:
    """Certificate and key in one file, so that one write changes both."""
    key = ec.generate_private_key(ec.SECP256R1())
    own = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "Secondfix desk")])
    of_authority = authority.extensions.get_extension_for_class(x509.SubjectKeyIdentifier).value
    made = (
        _builder(own, authority.subject, now, _LEAF_LASTS)
        .public_key(key.public_key())
        .add_extension(x509.SubjectAlternativeName([_subject(n) for n in names]), critical=False)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(signs_others=False), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_subject_key_identifier(of_authority), critical=False
        )
        .sign(signing, hashes.SHA256())
    )
    return made.public_bytes(Encoding.PEM) + _pem(key)


def _builder(own: x509.Name, issuer: x509.Name, now: datetime, lasts: timedelta) -> x509.CertificateBuilder:
    builder = x509.CertificateBuilder().subject_name(own).issuer_name(issuer)
    builder = builder.serial_number(x509.random_serial_number())
    return builder.not_valid_before(now - _EARLIER).not_valid_after(now - _EARLIER + lasts)


def _usage(*, signs_others: bool) -> x509.KeyUsage:
    return x509.KeyUsage(
        digital_signature=not signs_others, key_cert_sign=signs_others, crl_sign=signs_others,
        content_commitment=False, key_encipherment=False, data_encipherment=False, key_agreement=False,
        encipher_only=False, decipher_only=False,
    )  # fmt: skip


def _still_good(served: Path, authority: x509.Certificate, names: Iterable[str], now: datetime) -> bool:
    try:
        held = x509.load_pem_x509_certificate(served.read_bytes())
        held.verify_directly_issued_by(authority)
        subjects = held.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except Exception:
        return False
    return set(subjects) == {_subject(n) for n in names} and now + _LEFT < held.not_valid_after_utc


def _within(authority: x509.Certificate, name: str) -> bool:
    allowed = authority.extensions.get_extension_for_class(x509.NameConstraints).value.permitted_subtrees
    return any(_covers(one, name) for one in allowed or ())


def _covers(allowed: x509.GeneralName, name: str) -> bool:
    """Whether a permitted subtree holds a name or an address (RFC 5280 4.2.1.10)."""
    subject = _subject(name)
    if isinstance(allowed, x509.DNSName) and isinstance(subject, x509.DNSName):
        return name == allowed.value or name.endswith(f".{allowed.value}")
    if isinstance(allowed, x509.IPAddress) and isinstance(subject, x509.IPAddress):
        network = ip_network(str(allowed.value))
        return ip_address(name).version == network.version and ip_address(name) in network
    return False


def _subject(name: str) -> x509.GeneralName:
    try:
        return x509.IPAddress(ip_address(name))
    except ValueError:
        return x509.DNSName(name)


def _general(name: str) -> x509.GeneralName:
    """A name or network as a subtree."""
    try:
        return x509.IPAddress(ip_network(name))
    except ValueError:
        return x509.DNSName(name)


def _key_of(file: Path) -> ec.EllipticCurvePrivateKey:
    key = load_pem_private_key(file.read_bytes(), None)
    if not isinstance(key, ec.EllipticCurvePrivateKey):
        raise ValueError(f"{file.name} is not a key of this desk's authority")
    return key


def _pem(key: ec.EllipticCurvePrivateKey) -> bytes:
    return key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())


def _write(path: Path, data: bytes) -> None:
    """Whole or not at all, readable by the owner alone."""
    beside = path.with_name(f".{path.name}.{secrets.token_hex(6)}")
    handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(path)
    finally:
        beside.unlink(missing_ok=True)
