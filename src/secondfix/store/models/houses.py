"""Houses, their edits and issues, and the cover sheet that can be erased."""

from django.db import models

from secondfix.store.ids import new_id, now
from secondfix.store.models.accounts import Account


class Stage(models.TextChoices):
    """How far the job has come."""

    SURVEY = "survey", "survey"
    DESIGN = "design", "design"
    SECOND_FIX = "second_fix", "second fix"
    TEST = "test", "function test"
    HANDED_OVER = "handed_over", "handed over"


class House(models.Model):
    """A house and its current document, which is that of edit ``number``."""

    id = models.UUIDField(primary_key=True)
    name = models.CharField(max_length=80)
    stage = models.CharField(max_length=12, choices=Stage.choices, default=Stage.SURVEY)
    document = models.TextField()
    number = models.PositiveIntegerField()
    away_at = models.DateTimeField(null=True)
    away_by = models.ForeignKey(Account, null=True, on_delete=models.PROTECT, related_name="+")


class Edit(models.Model):
    """One save, never changed: the whole document as it was sent or merged, compressed.

    ``stands`` tells an edit that became current from one set aside (faults or a conflict). ``asked`` is the
    digest of what its writer sent, so that a save sent twice is known; ``told`` is what was answered.
    """

    id = models.UUIDField(primary_key=True, default=new_id, editable=False)
    house = models.ForeignKey(House, on_delete=models.PROTECT, related_name="edits")
    number = models.PositiveIntegerField()
    base = models.PositiveIntegerField()
    stands = models.BooleanField()
    at = models.DateTimeField(default=now)
    by = models.ForeignKey(Account, on_delete=models.PROTECT, related_name="+")
    words = models.TextField(blank=True)
    packed = models.BinaryField()
    asked = models.BinaryField(max_length=32)
    told = models.TextField()

    class Meta:
        constraints = (models.UniqueConstraint(fields=["house", "number"], name="one_edit_a_number"),)


class Issue(models.Model):
    """A named revision that went out of the door: an edit, the assumptions and editions it was made with."""

    id = models.UUIDField(primary_key=True, default=new_id, editable=False)
    house = models.ForeignKey(House, on_delete=models.PROTECT, related_name="issues")
    letter = models.CharField(max_length=4)
    edit = models.ForeignKey(Edit, on_delete=models.PROTECT, related_name="+")
    at = models.DateTimeField(default=now)
    by = models.ForeignKey(Account, on_delete=models.PROTECT, related_name="+")
    words = models.TextField(blank=True)
    assumptions = models.TextField()
    editions = models.TextField()

    class Meta:
        constraints = (models.UniqueConstraint(fields=["house", "letter"], name="one_issue_a_letter"),)


class CoverSheet(models.Model):
    """Names and addresses of people, apart from the house, so that they can be erased for good."""

    house = models.OneToOneField(House, primary_key=True, on_delete=models.PROTECT, related_name="cover")
    customer = models.CharField(max_length=200, blank=True)
    address = models.TextField(max_length=500, blank=True)
    reached_by = models.TextField(max_length=500, blank=True)
    note = models.TextField(max_length=2000, blank=True)
