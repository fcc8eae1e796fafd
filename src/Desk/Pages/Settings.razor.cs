using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Localization;
using Slantwise.Records.Schools;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages;

/// <summary>The school's name and policy, and how this browser shows the pages.</summary>
public partial class Settings
{
    private static readonly string[] Themes = ["auto", "light", "dark"];
    private string? _nameFinding;
    private string? _policyFinding;

    [CascadingParameter]
    private HttpContext? Http { get; set; }

    [SupplyParameterFromQuery(Name = "saved")]
    private string? Saved { get; set; }

    [SupplyParameterFromForm(FormName = "school")]
    private string? SchoolName { get; set; }

    [SupplyParameterFromForm(FormName = "policy")]
    private PolicyChoice? HeadWeight { get; set; }

    [SupplyParameterFromForm(FormName = "policy")]
    private PolicyChoice? Inversion { get; set; }

    [SupplyParameterFromForm(FormName = "policy")]
    private PolicyChoice? Rolls { get; set; }

    [SupplyParameterFromForm(FormName = "reader")]
    private string? Language { get; set; }

    [SupplyParameterFromForm(FormName = "reader")]
    private string? Theme { get; set; }

    private IEnumerable<(string Name, PolicyChoice Chosen)> Choices =>
    [
        (nameof(HeadWeight), HeadWeight ?? Desk.School.Policy.HeadWeight),
        (nameof(Inversion), Inversion ?? Desk.School.Policy.Inversion),
        (nameof(Rolls), Rolls ?? Desk.School.Policy.Rolls),
    ];

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

    private async Task SavePolicyAsync()
    {
        var policy = Desk.School.Policy;
        var changed = policy with
        {
            HeadWeight = HeadWeight ?? policy.HeadWeight,
            Inversion = Inversion ?? policy.Inversion,
            Rolls = Rolls ?? policy.Rolls,
        };
        _policyFinding = await Desk.TryAsync(() => Desk.SaveAsync(Desk.School with { Policy = changed }));
        if (_policyFinding is null) Navigation.NavigateTo("/settings?saved=policy");
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
