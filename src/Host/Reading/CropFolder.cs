using System.Globalization;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Reading;

/// <summary>A folder for pictures of the boxes that wait for a person.</summary>
internal sealed class CropFolder
{
    private readonly string _folder;

    public CropFolder(string folder)
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        // Pieces of children's sheets: for the eyes of whoever asked for them.
        else if (!Directory.Exists(folder)) Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        _folder = folder;
    }

    /// <summary>Writes a page's boxes, named by the pupil's code and the item.</summary>
    public void Write(TakenPage page, PageNames names)
    {
        foreach (var form in page.Forms)
        {
            // Two pages of one unknown pupil would else write over each other.
            var called = form.Scan.PupilId is null ? $"{names.Called(form.Scan)}-{form.Scan.PictureTag.ToString("x", CultureInfo.InvariantCulture)}" : names.Called(form.Scan);
            foreach (var crop in form.Crops) File.WriteAllBytes(Path.Combine(_folder, $"{called}-{crop.PictureKey}.png"), crop.Bytes);
        }
    }
}
