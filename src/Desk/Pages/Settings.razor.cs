using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Localization;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages;

/// <summary>The school's name, and how this browser shows the pages; its policy is a part of its own.</summary>
public partial class Settings
{
    private static readonly string[] Themes = ["auto", "light", "dark"];
    private string? _nameFinding;

    [CascadingParameter]
    private HttpContext? Http { get; set; }

    [SupplyParameterFromQuery(Name = "saved")]
    private string? Saved { get; set; }

    [SupplyParameterFromForm(FormName = "school")]
    private string? SchoolName { get; set; }

    [SupplyParameterFromForm(FormName = "reader")]
    private string? Language { get; set; }

    [SupplyParameterFromForm(FormName = "reader")]
    private string? Theme { get; set; }

    /// <inheritdoc />
    protected override Task LoadAsync() => Task.CompletedTask;

    private async Task SaveSchoolAsync()
    {
        var name = (SchoolName ?? "").Trim();
        _nameFinding = name.Length is 0 or > 120
            ? Say("SchoolNameWrong")
            : await Desk.TryAsync(() => Desk.SaveAsync(Desk.School with { Name = name }));
        if (_nameFinding is null) Navigation.NavigateTo("/settings?saved=school");
    }

    private void SaveReader()
    {
        if (Http is not { } http) return;
        if (Language is { } language && DeskServices.Languages.Contains(language))
        {
            // The region's way with dates and numbers stays where the language does.
            var culture = CultureInfo.CurrentCulture.TwoLetterISOLanguageName == language ? CultureInfo.CurrentCulture.Name : language;
            http.Response.Cookies.Append(
                DeskCookies.Language,
                CookieRequestCultureProvider.MakeCookieValue(new RequestCulture(culture, language)),
                DeskCookies.Kept(http.Request));
        }
        if (Theme is "light" or "dark") http.Response.Cookies.Append(DeskCookies.Theme, Theme, DeskCookies.Kept(http.Request));
        else http.Response.Cookies.Delete(DeskCookies.Theme);
        Navigation.NavigateTo("/settings?saved=reader");
    }
}
