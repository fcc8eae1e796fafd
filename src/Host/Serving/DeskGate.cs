using System.Net;
using Slantwise.Desk;
using Slantwise.Host.Printing;
using Slantwise.Host.Words;

namespace Slantwise.Host.Serving;

/// <summary>Keeps the desk to the teacher where the program listens to the network: tablets on the gym's wifi reach the lesson and nothing else.</summary>
/// <remarks>Why it is as it is stands in docs/decisions/0014-the-desk-answers-its-own-machine.md.</remarks>
internal static class DeskGate
{
    // What the floor's pages are made of, and this page's look. Nothing of it names a pupil, a class or a result.
    private static readonly PathString[] Open = ["/floor", "/sync", "/fonts", "/_content", DeskKeys.Path];

    // A proxy on this machine sends everybody's requests from here; it says so in one of these.
    private static readonly string[] PassedOn = ["Forwarded", "X-Forwarded-For", "X-Real-IP", "Via"];

    /// <summary>Asks everyone who comes to the desk from elsewhere for the desk's cookie.</summary>
    public static void UseDeskGate(this WebApplication app) => app.Use(async (context, next) =>
    {
        var request = context.Request;
        if (Open.Any(open => request.Path.StartsWithSegments(open)) || IsFromHere(context)
            || context.RequestServices.GetRequiredService<DeskKeys>().Opens(request.Cookies[DeskKeys.Cookie]))
        {
            await next(context);
            return;
        }
        await AnswerAsync(context, StatusCodes.Status403Forbidden, NoticePage.Html(HostWords.Say("DeskClosed"), "/floor/", HostWords.Say("GateToFloor")));
    });

    /// <summary>Maps the page that a link for another device leads to.</summary>
    public static void MapDeskKey(this WebApplication app) => app.MapGet(DeskKeys.Path, (HttpContext context, DeskKeys keys) =>
    {
        if (keys.Use(context.Request.Query["k"]) is not { } cookie)
            return AnswerAsync(context, StatusCodes.Status403Forbidden, NoticePage.Html(HostWords.Say("DeskKeyInvalid"), "/floor/", HostWords.Say("GateToFloor")));
        context.Response.Cookies.Append(DeskKeys.Cookie, cookie, new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            MaxAge = DeskKeys.CookieLasts,
            Path = "/",
            SameSite = SameSiteMode.Strict,
            Secure = context.Request.IsHttps,
        });
        // A page with a link and no redirect: whoever came from another site would arrive without the cookie.
        return AnswerAsync(context, StatusCodes.Status200OK, NoticePage.Html(HostWords.Say("DeskKeyTaken"), "/", HostWords.Say("ToDesk")));
    });

    /// <summary>Whether a request was made on this machine, by whoever sits at it.</summary>
    public static bool IsFromHere(HttpContext context) =>
        context.Connection.RemoteIpAddress is { } from && IPAddress.IsLoopback(from.IsIPv4MappedToIPv6 ? from.MapToIPv4() : from)
        && !PassedOn.Any(context.Request.Headers.ContainsKey);

    private static Task AnswerAsync(HttpContext context, int status, string html)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(html, context.RequestAborted);
    }
}
