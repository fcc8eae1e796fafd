using Microsoft.AspNetCore.Http;

namespace Slantwise.Desk;

/// <summary>The two things the desk remembers in the browser; neither says who is reading.</summary>
public static class DeskCookies
{
    /// <summary>The reader's language, in the form of the framework's culture cookie.</summary>
    public const string Language = "slantwise-language";

    /// <summary>The reader's colours: <c>light</c>, <c>dark</c>, or none to follow the machine.</summary>
    public const string Theme = "slantwise-theme";

    /// <summary>The colours asked for: <c>light</c> or <c>dark</c>; none to follow the machine.</summary>
    /// <param name="request">The page asked for; none where a page is already live.</param>
    public static string? ThemeOf(HttpRequest? request) =>
        request?.Cookies[Theme] is "light" or "dark" ? request.Cookies[Theme] : null;

    /// <summary>How long and how closely a cookie is kept: a year, this site only.</summary>
    /// <param name="request">The page asked for.</param>
    public static CookieOptions Kept(HttpRequest request) => new()
    {
        MaxAge = TimeSpan.FromDays(365),
        SameSite = SameSiteMode.Lax,
        HttpOnly = true,
        IsEssential = true,
        Secure = request.IsHttps,
        Path = "/",
    };
}
