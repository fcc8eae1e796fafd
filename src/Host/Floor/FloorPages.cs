namespace Slantwise.Host.Floor;

/// <summary>The floor's pages under <c>/floor/</c>, as the build laid them beside the program.</summary>
internal static class FloorPages
{
    // One page; it looks at its address to know whose it is.
    private static readonly string[] Faces = ["/floor/", "/floor/teacher", "/floor/board"];

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "floor");

    /// <summary>Which version of the pages this is: what a device's own version is compared with. "0" where there are none.</summary>
    public static string Version { get; } = VersionIn(Folder);

    /// <summary>Maps the pages and their parts.</summary>
    public static void MapFloor(this WebApplication app)
    {
        var files = FloorFile.In(Folder);
        if (!files.TryGetValue("index.html", out var page)) return;
        foreach (var face in Faces) app.MapMethods(face, Reading, http => ShownAsync(http, page));
        foreach (var (name, file) in files) app.MapMethods("/floor/" + name, Reading, http => file.Answer(http).ExecuteAsync(http));
    }

    private static Task ShownAsync(HttpContext http, FloorFile page)
    {
        if (http.Request.Path != "/floor") return page.Answer(http).ExecuteAsync(http);
        // What works without a network lies under /floor/; what a link brings behind its # goes along.
        http.Response.StatusCode = StatusCodes.Status308PermanentRedirect;
        http.Response.Headers.Location = "/floor/";
        return Task.CompletedTask;
    }

    private static string[] Reading => [HttpMethods.Get, HttpMethods.Head];

    private static string VersionIn(string folder)
    {
        var path = Path.Combine(folder, "version.txt");
        return File.Exists(path) ? File.ReadAllText(path).Trim() : "0";
    }
}
