from django.urls import path

from exercises.practice.views import drills, media, sittings, uploads

urlpatterns = [
    # /drills/…
    path("drills/", drills.drills, name="drills"),
    path("drills/<slug:slug>/", drills.drill, name="drill"),
    path("drills/<slug:slug>/ask/", drills.drill_ask, name="drill-ask"),
    path("answers/<str:token>/", drills.drill_answer, name="drill-answer"),
    path("answers/<str:token>/in-words/", drills.drill_in_words, name="drill-in-words"),
    # /sittings/…
    path("sittings/", sittings.new_sitting, name="new-sitting"),
    path("sittings/<str:token>/", sittings.sitting, name="sitting"),
    path("sittings/<str:token>/stop/", sittings.sitting_stop, name="sitting-stop"),
    # /shown/…: pictures and sounds of questions
    path("shown/<str:token>/", media.medium, name="medium"),
    # /pictures/…: those that learners sent
    path("pictures/<str:name>/", uploads.sent_picture, name="sent-picture"),
    path("pictures/<str:name>/small/", uploads.sent_picture_small, name="sent-picture-small"),
]
