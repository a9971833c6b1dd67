"""The calls of the desk together: their errors, their description, who may call."""

from typing import Any

from ninja import NinjaAPI
from ninja.security import SessionAuth

from secondfix.house import json_schema
from secondfix.web.api.asking import views as asking
from secondfix.web.api.keeping import views as keeping
from secondfix.web.api.radio import views as radio
from secondfix.web.api.reading import Reader
from secondfix.web.api.refusing import take_errors
from secondfix.web.api.site import views as site


class Calls(NinjaAPI):
    """As the library describes them, with the shape of a house's document beside."""

    def get_openapi_schema(self, **kwargs: Any) -> Any:
        """OpenAPI 3.1, with the document as a component of its own."""
        described = super().get_openapi_schema(**kwargs)
        described["components"]["schemas"].update(document_schemas())
        return described

    def get_openapi_operation_id(self, operation: Any) -> str:
        """The word that a call is known by."""
        return str(operation.view_func.__name__.strip("_"))


def document_schemas() -> dict[str, Any]:
    """The published schema of a house's document, its parts as components beside."""
    whole = _renamed(json_schema())
    parts = whole.pop("$defs", {})
    whole.pop("$schema", None)
    whole.pop("$id", None)
    return {"HouseDocument": whole, **{f"House.{name}": part for name, part in parts.items()}}


def _renamed(plain: Any) -> Any:
    if isinstance(plain, dict):
        return {
            k: f"#/components/schemas/House.{v.removeprefix('#/$defs/')}"
            if k == "$ref" and isinstance(v, str)
            else _renamed(v)
            for k, v in plain.items()
        }
    return [_renamed(v) for v in plain] if isinstance(plain, list) else plain


api = Calls(
    title="Secondfix",
    version="1",
    description=(
        "The questions of the command line and the book of the desk, asked by a program. "
        "No answer calls a circuit safe: a check that passes says that no fault was found."
    ),
    urls_namespace="api",
    docs_url=None,
    auth=[SessionAuth()],
    parser=Reader(),
)
take_errors(api)
api.add_router("", keeping.router)
api.add_router("", asking.router)
api.add_router("", radio.router)
api.add_router("", site.router)
