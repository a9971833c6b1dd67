"""Who may come in, and with which right."""

from typing import ClassVar, Self

from django.contrib.auth.base_user import AbstractBaseUser, BaseUserManager
from django.db import models

from secondfix.store.ids import new_id, now


class Right(models.TextChoices):
    """What an account may do: a reader sees, a writer also changes, and sees codes."""

    READER = "reader", "reader"
    WRITER = "writer", "writer"


class Account(AbstractBaseUser):
    """A person who may come in. It is closed, never deleted: edits keep naming it."""

    id = models.UUIDField(primary_key=True, default=new_id, editable=False)
    username = models.CharField(max_length=40, unique=True)
    right = models.CharField(max_length=6, choices=Right.choices, default=Right.READER)
    is_active = models.BooleanField(default=True)
    made_at = models.DateTimeField(default=now)

    objects: ClassVar[BaseUserManager[Self]] = BaseUserManager()

    USERNAME_FIELD = "username"
    REQUIRED_FIELDS: ClassVar[list[str]] = []

    @property
    def may_write(self) -> bool:
        """Whether it may change anything, and see codes. The one place that says so."""
        return self.is_active and self.right == Right.WRITER
