using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Slantwise.Engines.Marks;

namespace Slantwise.Paper.Reading;

/// <summary>Pages of a PDF drawn by poppler's <c>pdftoppm</c>, where it is on this machine: for what is packed in ways we do not unpack.</summary>
internal static class Poppler
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    /// <summary>A page in grey; none where the program is missing, fails or takes too long.</summary>
    public static async Task<GreyImage?> PageAsync(byte[] pdf, int number, int sidePx, CancellationToken cancel)
    {
        var page = number.ToString(CultureInfo.InvariantCulture);
        // From standard input and to standard output: no copy of a child's page is left on a disk.
        var start = new ProcessStartInfo("pdftoppm", ["-f", page, "-l", page, "-singlefile", "-gray", "-scale-to", sidePx.ToString(CultureInfo.InvariantCulture), "-"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Started(start);
        if (process is null) return null;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        patience.CancelAfter(Patience);
        try
        {
            var errors = process.StandardError.BaseStream.CopyToAsync(Stream.Null, patience.Token);
            var writing = WriteAsync(process, pdf, patience.Token);
            using var output = new MemoryStream();
            await process.StandardOutput.BaseStream.CopyToAsync(output, patience.Token);
            await writing;
            await errors;
            await process.WaitForExitAsync(patience.Token);
            return process.ExitCode == 0 ? Read(output.GetBuffer().AsSpan(0, (int)output.Length)) : null;
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
        {
            return null;
        }
        finally
        {
            if (!process.HasExited) process.Kill();
        }
    }

    private static Process? Started(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start);
        }
        catch (Win32Exception)
        {
            return null;
        }
    }

    private static async Task WriteAsync(Process process, byte[] pdf, CancellationToken cancel)
    {
        try
        {
            await process.StandardInput.BaseStream.WriteAsync(pdf, cancel);
            process.StandardInput.Close();
        }
        // It has read enough, or given up; what it says with its exit code counts.
        catch (IOException)
        {
        }
    }

    // A binary grey map: "P5", width, height, deepest value, one white space, a byte a pixel.
    private static GreyImage? Read(ReadOnlySpan<byte> map)
    {
        var at = 0;
        if (!map.StartsWith("P5"u8)) return null;
        at += 2;
        if (Number(map, ref at) is not (> 0 and < 100_000 and var width) || Number(map, ref at) is not (> 0 and < 100_000 and var height) || Number(map, ref at) != 255) return null;
        at++;
        return map.Length - at >= (long)width * height ? new GreyImage(width, height, map.Slice(at, width * height).ToArray()) : null;
    }

    private static int Number(ReadOnlySpan<byte> map, ref int at)
    {
        while (at < map.Length && char.IsWhiteSpace((char)map[at])) at++;
        var number = 0;
        while (at < map.Length && char.IsAsciiDigit((char)map[at]) && number < 1_000_000) number = number * 10 + map[at++] - '0';
        return number;
    }
}
