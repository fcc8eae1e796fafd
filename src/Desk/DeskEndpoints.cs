using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Localization;

namespace Slantwise.Desk;

/// <summary>Puts the desk's pages into a program.</summary>
public static class DeskEndpoints
{
    /// <summary>Maps the pages and their static files, and sets the reader's language. Call once, after other middleware.</summary>
    /// <param name="app">The program, with <see cref="DeskServices.AddDesk"/> among its services.</param>
    public static WebApplication MapDesk(this WebApplication app)
    {
        app.UseExceptionHandler("/fault", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/missing", createScopeForStatusCodePages: true);
        app.UseRequestLocalization();
        app.Use(KeepAskedLanguage);
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }

    // A live page answers over its own connection, which carries the cookie but not the address's ?lang.
    private static Task KeepAskedLanguage(HttpContext context, RequestDelegate next)
    {
        if (context.Features.Get<IRequestCultureFeature>() is { Provider: QueryStringRequestCultureProvider } asked)
        {
            var value = CookieRequestCultureProvider.MakeCookieValue(asked.RequestCulture);
            context.Response.Cookies.Append(DeskCookies.Language, value, DeskCookies.Kept(context.Request));
        }
        return next(context);
    }
}
