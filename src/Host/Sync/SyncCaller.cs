using Slantwise.Records.Floor;

namespace Slantwise.Host.Sync;

/// <summary>The device behind a request.</summary>
internal static class SyncCaller
{
    private const string Scheme = "Bearer ";
    private static readonly object Key = new();

    /// <summary>The device that shows its token.</summary>
    /// <exception cref="FloorRefusal">No token, none of ours, one that has run out, or a lesson that is no longer here.</exception>
    public static async Task<FloorMember> FindAsync(HttpContext http)
    {
        var said = http.Request.Headers.Authorization.ToString();
        var services = http.RequestServices;
        if (!said.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase) || services.GetRequiredService<FloorTokens>().Read(said[Scheme.Length..].Trim()) is not var (school, lesson, device))
            throw new FloorRefusal(FloorProblemKind.TokenInvalid);
        var member = await services.GetRequiredService<FloorHub>().MemberAsync(school, lesson, device);
        http.Items[Key] = member;
        return member;
    }

    /// <summary>The device, where it was found already.</summary>
    public static FloorMember? Known(HttpContext http) => http.Items[Key] as FloorMember;
}
