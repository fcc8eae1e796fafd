using System.Diagnostics;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>A program of the machine that looks at a PDF with other eyes than ours.</summary>
internal static class Tool
{
    /// <summary>What the program printed; the test is skipped where the program is missing, and fails where it fails.</summary>
    public static string Run(string name, params string[] arguments)
    {
        Assert.SkipUnless(IsHere(name), $"{name} is not on this machine (Debian: poppler-utils, qpdf, zbar-tools).");
        var start = new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{name} ended with {process.ExitCode}: {errors.Result}{output}");
        return output;
    }

    private static bool IsHere(string name) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .Any(folder => File.Exists(Path.Combine(folder, name)));
}
