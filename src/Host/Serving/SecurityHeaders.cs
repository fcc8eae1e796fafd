namespace Slantwise.Host.Serving;

/// <summary>What every answer tells the browser: nothing from elsewhere, nothing to elsewhere.</summary>
internal static class SecurityHeaders
{
    // Drawings colour their shapes with style attributes; style sheets and scripts come from this program alone.
    private const string ContentPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline'; img-src 'self' data: blob:; "
        + "font-src 'self'; connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'self'";

    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        // Pages show pupils; those with a lifetime of their own (fonts, style sheets) say so later.
        headers.CacheControl = "no-store";
        return next(context);
    });
}
