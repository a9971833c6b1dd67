"""Accounts: made, given a right, closed. Nobody is deleted; the last writer stays."""

from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.db import IntegrityError, connection, transaction

from secondfix.house import Fault
from secondfix.store.answers import NotAllowedError, Refused, UnknownError
from secondfix.store.models import Account, Right
from secondfix.store.plain import plain


def require_writer(by: Account) -> None:
    """Raises NotAllowedError unless the account may change things."""
    if not by.may_write:
        raise NotAllowedError(f"{by.username} may not change anything here")


def accounts() -> tuple[Account, ...]:
    """Every account by name, closed ones too; an empty tuple on a desk that nobody has begun."""
    return tuple(Account.objects.order_by("username"))


def create_account(*, username: str, password: str, right: Right, by: Account | None) -> Account | Refused:
    """A new account, or every fault of its name and password.

    ``by`` is a writer; None only for the very first account, which must be a writer. Raises NotAllowedError.
    """
    username = plain(username).strip()
    made = Account(username=username, right=Right(right))
    faults = _name_faults(username) + _password_faults(password, made)
    if faults:
        return Refused(tuple(faults))
    made.set_password(password)
    try:
        with transaction.atomic():
            if by is None:
                _alone()
            if by is None and (Account.objects.exists() or made.right != Right.WRITER):
                raise NotAllowedError("the first account is a writer; later ones are made by a writer")
            if by is not None:
                require_writer(by)
            made.save(force_insert=True)
    except IntegrityError:
        return Refused((Fault("account", "username", f"'{username}'", "a name that nobody has here"),))
    return made


def set_password(account: Account, password: str) -> Refused | None:
    """Give an account another password; None when done. Whoever calls has asked who is asking."""
    faults = _password_faults(password, account)
    if faults:
        return Refused(tuple(faults))
    account.set_password(password)
    account.save(update_fields=["password"])
    return None


def change_account(
    *, username: str, by: Account, right: Right | None = None, active: bool | None = None
) -> Account | Refused:
    """Another right, or closed or open again. Refused where no open writer would be left."""
    require_writer(by)
    with transaction.atomic():
        everyone = {a.username: a for a in Account.objects.select_for_update()}
        account = everyone.get(username)
        if account is None:
            raise UnknownError(f"no account {username}")
        account.right = account.right if right is None else Right(right)
        account.is_active = account.is_active if active is None else active
        if not any(a.may_write for a in everyone.values()):
            return Refused((Fault("account", username, "the last writer", "another writer first"),))
        account.save(update_fields=["right", "is_active"])
    return account


def _alone() -> None:
    """Of two who make the first account at once the later waits, and is refused; SQLite has one writer."""
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("LOCK TABLE store_account IN EXCLUSIVE MODE")


def _name_faults(username: str) -> list[Fault]:
    if 0 < len(username) <= 40 and username.isprintable():
        return []
    return [Fault("account", "username", f"{len(username)} characters", "1 to 40 characters on one line")]


def _password_faults(password: str, account: Account) -> list[Fault]:
    try:
        validate_password(password, account)
    except ValidationError as error:
        return [Fault("account", "password", "not good enough", words) for words in error.messages]
    return []
