"""Addresses of the journal and of what it says."""

from django.urls import path

from secondfix.web.journal import found, views

urlpatterns = [
    path("house/<str:house_id>/journal", views.journal, name="journal"),
    path("house/<str:house_id>/journal.jsonl", views.out, name="journal-out"),
    path("house/<str:house_id>/journal/<str:kind>", views.entry, name="entry"),
    path("house/<str:house_id>/as-built", found.as_built_sheet, name="as-built"),
    path("house/<str:house_id>/function-test", found.function_test_sheet, name="function-test"),
]
