from django.db import migrations, models
from django.db.models import OuterRef, Subquery


def keep_names(apps, schema_editor):
    """Those signed before this was kept: the names of today, for want of those of their days."""
    alias = schema_editor.connection.alias
    people = apps.get_model("cohorts", "Person").objects.using(alias)
    apps.get_model("exercises", "SignOff")._base_manager.using(alias).update(
        person_name=Subquery(people.filter(pk=OuterRef("person")).values("name")),
        instructor_name=Subquery(people.filter(pk=OuterRef("instructor")).values("name")),
    )


class Migration(migrations.Migration):
    dependencies = [
        ("cohorts", "0005_deleted_accounts"),
        ("exercises", "0010_sign_offs_stay"),
    ]

    operations = [
        migrations.AddField(
            model_name="signoff",
            name="person_name",
            field=models.CharField(default="", max_length=120, verbose_name="name as signed"),
            preserve_default=False,
        ),
        migrations.AddField(
            model_name="signoff",
            name="instructor_name",
            field=models.CharField(default="", max_length=120, verbose_name="signed as"),
            preserve_default=False,
        ),
        migrations.RunPython(keep_names, migrations.RunPython.noop),
    ]
