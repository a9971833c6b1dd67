"""Addresses of maintenance."""

from django.urls import path

from secondfix.web.maintaining import lists, views

urlpatterns = [
    path("house/<str:house_id>/swap", views.swap, name="swap"),
    path("house/<str:house_id>/swap/work/<str:job_id>", views.swap_work, name="swap-work"),
    path("house/<str:house_id>/swap.<str:form>", views.swap_out, name="swap-out"),
    path("house/<str:house_id>/reconcile", lists.reconcile_sheet, name="reconcile"),
    path("house/<str:house_id>/reconcile/write", lists.write_mends, name="reconcile-write"),
    path("new-list", lists.new_list, name="new-list"),
]
