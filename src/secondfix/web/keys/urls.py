"""Address of the key ring: one, and codes pass through its posts alone."""

from django.urls import path

from secondfix.web.keys import views

urlpatterns = [path("house/<str:house_id>/keys", views.keys, name="keys")]
