from django.urls import path

from exercises.desk import views

urlpatterns = [
    # /desk/…: drills that instructors write
    path("desk/", views.desk, name="desk"),
    path("desk/new/<slug:form>/", views.new_own, name="new-own"),
    path("desk/draw/<slug:form>/", views.draw, name="draw-own"),
    path("desk/<int:pk>/", views.own_drill, name="own-drill"),
    path("desk/<int:pk>/revise/", views.revise_own, name="revise-own"),
    path("desk/<int:pk>/try/", views.try_own, name="try-own"),
    path("desk/<int:pk>/publish/", views.publish_own, name="publish-own"),
    path("desk/<int:pk>/retire/", views.retire_own, name="retire-own"),
]
