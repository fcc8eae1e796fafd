using System.Globalization;
using Microsoft.AspNetCore.Localization;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.AspNetCore.Builder;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Desk.Pages.Scans;

namespace Slantwise.Desk;

/// <summary>Registers what the desk's pages need.</summary>
public static class DeskServices
{
    /// <summary>The languages the desk speaks, the first one when a reader asks for none of them.</summary>
    public static IReadOnlyList<string> Languages { get; } = ["en", "es"];

    /// <summary>Adds the pages' services. The caller adds an <c>IStore</c>.</summary>
    /// <param name="services">The program's services.</param>
    public static IServiceCollection AddDesk(this IServiceCollection services)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton<ReadingsShelf>();
        services.AddSingleton<PileShelf>();
        services.AddSingleton<FloorTickets>();
        services.AddSingleton<DeskKeys>();
        services.AddScoped<DeskSchool>();
        services.AddHttpContextAccessor();
        services.AddRazorComponents().AddInteractiveServerComponents(options =>
        {
            // A laptop lid closed for a lesson must not cost what was typed before it.
            options.DisconnectedCircuitRetentionPeriod = TimeSpan.FromHours(2);
        });
        services.Configure<RequestLocalizationOptions>(options =>
        {
            options.SupportedCultures = options.SupportedUICultures = [.. Readable()];
            options.DefaultRequestCulture = new RequestCulture("en-GB", "en");
            options.FallBackToParentUICultures = true;
            options.RequestCultureProviders =
            [
                new QueryStringRequestCultureProvider { QueryStringKey = "lang", UIQueryStringKey = "lang", Options = options },
                new CookieRequestCultureProvider { CookieName = DeskCookies.Language, Options = options },
                new AcceptLanguageHeaderRequestCultureProvider { Options = options },
            ];
        });
        return services;
    }

    // Dates and numbers follow the reader's region where it is one of a language we speak.
    private static IEnumerable<CultureInfo> Readable() => CultureInfo
        .GetCultures(CultureTypes.AllCultures)
        .Where(culture => Languages.Contains(culture.TwoLetterISOLanguageName) && culture.Name.Length > 0);
}
