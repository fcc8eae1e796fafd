using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace Slantwise.Surface.Tests.Host;

/// <summary>The real program as a process of its own, as a user starts it.</summary>
public static class HostProgram
{
    /// <summary>Long enough for a loaded machine; reaching it is a hang, not slowness.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private const int Sigterm = 15;

    /// <summary>Runs a command to its end.</summary>
    /// <param name="arguments">The command line after the program's name.</param>
    public static Task<ProgramRun> RunAsync(params string[] arguments) => RunInAsync(input: null, language: "C.UTF-8", arguments);

    /// <summary>Runs a command to its end.</summary>
    /// <param name="input">What stands on standard input; none for nothing.</param>
    /// <param name="language">The locale it runs in.</param>
    /// <param name="arguments">The command line after the program's name.</param>
    public static async Task<ProgramRun> RunInAsync(string? input, string language, params string[] arguments)
    {
        using var process = Start(language, arguments);
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (input is not null) await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        await process.WaitForExitAsync().WaitAsync(Patience);
        return new ProgramRun(process.ExitCode, await output, await error);
    }

    /// <summary>Where the program lies.</summary>
    public static string Own => Path.Combine(AppContext.BaseDirectory, "slantwise.dll");

    /// <summary>Starts a command and leaves it to the caller.</summary>
    public static Process Start(string language, params string[] arguments) => StartFrom(Own, language, arguments);

    /// <summary>Starts a command of a program elsewhere.</summary>
    public static Process StartFrom(string program, string language, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        start.ArgumentList.Add(program);
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        start.Environment["LANG"] = start.Environment["LC_ALL"] = language;
        // What the person running the tests has set must not lead a command to their own data.
        foreach (var name in new[] { "SLANTWISE_DATA", "SLANTWISE_POSTGRES" }) start.Environment.Remove(name);
        return Process.Start(start)!;
    }

    /// <summary>Asks a process to end, as a terminal or a service does.</summary>
    public static void Terminate(Process process)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There is no SIGTERM on Windows.");
        Assert.Equal(0, Kill(process.Id, Sigterm));
    }

    [DllImport("libc", EntryPoint = "kill", SetLastError = true)]
    private static extern int Kill(int pid, int signal);
}
