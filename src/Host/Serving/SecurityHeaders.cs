namespace Slantwise.Host.Serving;

/// <summary>What every answer tells the browser: nothing from elsewhere, nothing to elsewhere.</summary>
internal static class SecurityHeaders
{
    // Drawings colour their shapes with style attributes; style sheets and scripts come from this program alone.
    private const string ContentPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline'; img-src 'self' data: blob:; "
        + "font-src 'self'; connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'self'";

    // At the last moment, since a page that fails starts again with an empty answer.
    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(Add, context);
        return next(context);
    });

    private static Task Add(object state)
    {
        var context = (HttpContext)state;
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        // Tablets read chains of codes, and the teacher speaks notes: on the floor's pages and nowhere else.
        var own = context.Request.Path.StartsWithSegments("/floor") ? "self" : "";
        headers["Permissions-Policy"] = $"camera=({own}), microphone=({own}), geolocation=()";
        // Pages and papers name pupils; what may be kept (fonts, style sheets) has said so itself.
        if (headers.CacheControl.Count == 0) headers.CacheControl = "no-store";
        return Task.CompletedTask;
    }
}
