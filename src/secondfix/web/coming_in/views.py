"""Coming in and going out: accounts, passwords, the ink of the sheet, the state of the desk."""

from django.contrib import messages
from django.contrib.auth import authenticate, login, logout, update_session_auth_hash
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.utils.http import url_has_allowed_host_and_scheme
from django.views.decorators.http import require_http_methods, require_POST

from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.showing import INKS, show

_WRONG = (
    "No open account has this name and password. After five wrong tries it rests for a quarter of an hour."
)
_YEAR_S = 365 * 24 * 3600


@require_http_methods(["GET", "POST"])
def sign_in(request: HttpRequest) -> HttpResponse:
    """The name and password of an account; on a desk without accounts, the first is made."""
    if not door.accounts():
        return redirect("first")
    wrong = ""
    if request.method == "POST":
        name, password = request.POST.get("username", ""), request.POST.get("password", "")
        account = authenticate(request, username=name, password=password)
        if account is not None:
            login(request, account)
            return redirect(_back(request, "/"))
        wrong = _WRONG
    context = {"wrong": wrong, "next": request.GET.get("next", "")}
    return show(request, "sign-in", "coming_in/sign_in.html", context, status=403 if wrong else 200)


@require_http_methods(["GET", "POST"])
def first(request: HttpRequest) -> HttpResponse:
    """The first account, a writer; the address is closed once there is one."""
    if door.accounts():
        return redirect("sign-in")
    faults: tuple[object, ...] = ()
    if request.method == "POST":
        name, password = request.POST.get("username", ""), request.POST.get("password", "")
        made = door.create_account(username=name, password=password, right=door.Right.WRITER, by=None)
        if isinstance(made, door.Account):
            login(request, made, backend="django.contrib.auth.backends.ModelBackend")
            return redirect("register")
        faults = made.faults
    return show(request, "first", "coming_in/first.html", {"faults": faults}, status=422 if faults else 200)


@require_POST
def leave(request: HttpRequest) -> HttpResponse:
    """Out again."""
    logout(request)
    return redirect("sign-in")


@require_POST
def ink(request: HttpRequest) -> HttpResponse:
    """Day or night sheet, kept in this browser."""
    answer = redirect(_back(request, "/"))
    chosen = request.POST.get("ink")
    if chosen in INKS:
        answer.set_cookie("ink", chosen, max_age=_YEAR_S, samesite="Lax", secure=request.is_secure())
    return answer


@require_http_methods(["GET", "POST"])
def people(request: HttpRequest) -> HttpResponse:
    """Every account; a new one; another right; closed and open again."""
    faults: tuple[object, ...] = ()
    if request.method == "POST":
        done = _change_people(request)
        if isinstance(done, door.Account):
            messages.success(
                request, f"{done.username} stands as {done.right}{'' if done.is_active else ', closed'}."
            )
            return redirect("people")
        faults = done.faults
    context = {"accounts": door.accounts(), "rights": door.Right.values, "faults": faults}
    return show(request, "people", "coming_in/people.html", context, status=422 if faults else 200)


def _change_people(request: HttpRequest) -> door.Account | door.Refused:
    form = request.POST
    right = form.get("right", "")
    chosen = door.Right(right) if right in door.Right.values else None
    name = form.get("username", "")
    if "password" in form:
        return door.create_account(
            username=name, password=form["password"], right=chosen or door.Right.READER, by=person(request)
        )
    active = {"open": True, "close": False}.get(form.get("act", ""))
    return door.change_account(username=name, by=person(request), right=chosen, active=active)


@require_http_methods(["GET", "POST"])
def password(request: HttpRequest) -> HttpResponse:
    """Another password for oneself; the old one is asked for."""
    faults: tuple[object, ...] = ()
    wrong = ""
    if request.method == "POST":
        if not person(request).check_password(request.POST.get("old", "")):
            wrong = "The old password is another one."
        else:
            refused = door.set_password(person(request), request.POST.get("password", ""))
            if refused is None:
                update_session_auth_hash(request, person(request))
                messages.success(request, "The new password holds from now on.")
                return redirect("register")
            faults = refused.faults
    context = {"faults": faults, "wrong": wrong}
    return show(
        request, "password", "coming_in/password.html", context, status=422 if faults or wrong else 200
    )


def _back(request: HttpRequest, otherwise: str) -> str:
    """Where the person came from, if that is a page of this desk."""
    wanted = request.POST.get("back") or request.GET.get("next") or ""
    own = url_has_allowed_host_and_scheme(wanted, {request.get_host()}, require_https=request.is_secure())
    return wanted if own and wanted else otherwise
