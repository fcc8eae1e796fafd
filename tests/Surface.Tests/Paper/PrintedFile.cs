using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>A PDF in a file of its own, gone after the test.</summary>
internal sealed class PrintedFile : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("slantwise-paper-").FullName;

    public PrintedFile(IReadOnlyList<Scene> pages, CultureInfo? language = null)
    {
        using var file = File.Create(Name);
        PdfWriter.Write(pages, "Balance 2, 5B", language ?? CultureInfo.GetCultureInfo("en"), file);
    }

    public string Name => Path.Combine(_folder, "sheets.pdf");

    public string Beside(string name) => Path.Combine(_folder, name);

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
