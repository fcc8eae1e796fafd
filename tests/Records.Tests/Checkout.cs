namespace Slantwise.Records.Tests;

/// <summary>The sources these tests were built from.</summary>
internal static class Checkout
{
    /// <summary>The root of the repository, for tests that read sources or samples.</summary>
    public static string Root { get; } = Found();

    private static string Found()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) return folder.FullName;
        throw new InvalidOperationException("This test reads the sources: run it from a checkout, below Slantwise.slnx.");
    }
}
