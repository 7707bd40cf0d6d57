"""How Django renders a form and a field of it: by the site's own templates."""

from django.forms.renderers import TemplatesSetting


class FormRenderer(TemplatesSetting):
    """`{{ form }}` and `{{ form.name.as_field_group }}`, wherever a form stands on a page.

    Widgets keep Django's templates, which are found as those of an app, `django.forms`.
    """

    form_template_name = "forms/form.html"
    field_template_name = "forms/field.html"
