"""Addresses of coming in."""

from django.urls import path

from secondfix.web.coming_in import views

urlpatterns = [
    path("sign-in", views.sign_in, name="sign-in"),
    path("first", views.first, name="first"),
    path("leave", views.leave, name="leave"),
    path("ink", views.ink, name="ink"),
    path("people", views.people, name="people"),
    path("password", views.password, name="password"),
]
