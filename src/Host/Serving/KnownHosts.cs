using System.Net;
using Slantwise.Host.Printing;
using Slantwise.Host.Words;

namespace Slantwise.Host.Serving;

/// <summary>Refuses requests that another site steers here: those that name a host we are not, and those that start on another origin.</summary>
/// <remarks>
/// A page elsewhere can point its own name at 127.0.0.1 and then read answers as its own (DNS rebinding); it cannot make the browser send
/// another name than its own. An address in digits cannot be pointed anywhere, so with a network address they are all taken.
/// </remarks>
internal static class KnownHosts
{
    /// <summary>Checks every request.</summary>
    /// <param name="app">The program.</param>
    /// <param name="bound">The address it listens on.</param>
    /// <param name="certificate">What it answers https with; none for plain http.</param>
    public static void UseKnownHosts(this WebApplication app, IPAddress bound, ServerCertificate? certificate) => app.Use(async (context, next) =>
    {
        var request = context.Request;
        if (!IsKnown(request.Host.Host, bound) && certificate?.Names(request.Host.Host) != true)
        {
            await RefuseAsync(context, StatusCodes.Status400BadRequest, "HostRefused");
            return;
        }
        var origin = request.Headers.Origin.ToString();
        if (origin.Length > 0 && !IsOwn(origin, request.Host))
        {
            await RefuseAsync(context, StatusCodes.Status403Forbidden, "OriginRefused");
            return;
        }
        await next(context);
    });

    /// <summary>Whether a host name is one of ours.</summary>
    public static bool IsKnown(string host, IPAddress bound)
    {
        if (host.Equals("localhost", StringComparison.OrdinalIgnoreCase)) return true;
        if (IPAddress.TryParse(host.Trim('[', ']'), out var address)) return IPAddress.IsLoopback(address) || !IPAddress.IsLoopback(bound);
        if (IPAddress.IsLoopback(bound)) return false;
        var machine = Dns.GetHostName();
        return host.Equals(machine, StringComparison.OrdinalIgnoreCase) || host.Equals(machine + ".local", StringComparison.OrdinalIgnoreCase);
    }

    private static bool IsOwn(string origin, HostString host) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var from) && from.Authority.Equals(host.Value, StringComparison.OrdinalIgnoreCase);

    private static Task RefuseAsync(HttpContext context, int status, string key)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(NoticePage.Html(HostWords.Say(key), null, null), context.RequestAborted);
    }
}
