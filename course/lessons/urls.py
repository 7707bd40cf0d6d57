from django.urls import URLPattern

# /lessons/…
urlpatterns: list[URLPattern] = []
