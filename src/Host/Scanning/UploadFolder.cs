using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using Slantwise.Desk.Pages.Scans;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Scanning;

/// <summary>Where sent files lie while they are read: in the owner's data folder, readable by the owner alone, and gone afterwards.</summary>
internal sealed class UploadFolder
{
    private const int MostNameLength = 120;
    private const int CopyByteCount = 1 << 16;

    private readonly string _path;
    private readonly UploadLimits _limits;

    /// <summary>Makes the folder new: what a program that was killed left in it goes.</summary>
    public UploadFolder(DataFolder folder, UploadLimits limits)
    {
        (_path, _limits) = (Path.Combine(folder.FullPath, "incoming"), limits);
        if (Directory.Exists(_path)) Directory.Delete(_path, recursive: true);
    }

    /// <summary>Takes the files of a form, each to its end or to the limit.</summary>
    /// <param name="request">A form with files.</param>
    /// <param name="cancel">Stops, and leaves nothing.</param>
    /// <returns>In the order sent; fields without a file are passed over.</returns>
    public async Task<IReadOnlyList<SpooledFile>> TakeAsync(HttpRequest request, CancellationToken cancel)
    {
        var files = new List<SpooledFile>();
        if (!MediaTypeHeaderValue.TryParse(request.ContentType, out var type) || HeaderUtilities.RemoveQuotes(type.Boundary).Value is not { Length: > 0 } boundary) return files;
        Make();
        var isComplete = false;
        try
        {
            var parts = new MultipartReader(boundary, request.Body);
            while (await parts.ReadNextSectionAsync(cancel) is { } part)
            {
                if (part.GetContentDispositionHeader() is not { } disposition || !disposition.IsFileDisposition()) continue;
                var name = NameOf(disposition);
                // A form that is sent with nothing chosen holds one file without a name.
                if (name.Length == 0) continue;
                files.Add(files.Count >= _limits.MaxFileCount
                    ? new SpooledFile(name, null, new ScanRemark(ScanRemarkKind.FileNotOpened, ScansSay(_limits.MaxFileCount)))
                    : await TakeAsync(name, part.Body, cancel));
            }
            isComplete = true;
            return files;
        }
        finally
        {
            if (!isComplete) Remove(files);
        }
    }

    /// <summary>Removes files that were read.</summary>
    public static void Remove(IEnumerable<SpooledFile> files)
    {
        foreach (var file in files)
        {
            if (file.Path is { } path) File.Delete(path);
        }
    }

    private static string ScansSay(int count) => Desk.Words.ScanPageWords.Say("TooMany", count);

    private async Task<SpooledFile> TakeAsync(string name, Stream body, CancellationToken cancel)
    {
        var path = Path.Combine(_path, Guid.NewGuid().ToString("N"));
        var isWhole = false;
        try
        {
            await using var file = new FileStream(path, Options());
            var buffer = new byte[CopyByteCount];
            long byteCount = 0;
            for (int read; (read = await body.ReadAsync(buffer, cancel)) > 0;)
            {
                byteCount += read;
                // The rest is read past, not kept, so that the files after it are not lost.
                if (byteCount <= _limits.MaxByteCount) await file.WriteAsync(buffer.AsMemory(0, read), cancel);
            }
            isWhole = byteCount <= _limits.MaxByteCount;
        }
        finally
        {
            if (!isWhole) File.Delete(path);
        }
        return isWhole
            ? new SpooledFile(name, path, null)
            : new SpooledFile(name, null, new ScanRemark(ScanRemarkKind.FileTooLarge, _limits.MaxMegabyteCount.ToString(CultureInfo.InvariantCulture)));
    }

    private void Make()
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(_path);
        else Directory.CreateDirectory(_path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    private static FileStreamOptions Options()
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Options = FileOptions.Asynchronous };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }

    // What a browser calls it, for sentences only: no folder, no control characters, not endless.
    private static string NameOf(ContentDispositionHeaderValue disposition)
    {
        var given = HeaderUtilities.RemoveQuotes(disposition.FileNameStar.HasValue ? disposition.FileNameStar : disposition.FileName).Value ?? "";
        var name = new StringBuilder();
        foreach (var letter in given[(given.LastIndexOfAny(['/', '\\']) + 1)..])
        {
            if (!char.IsControl(letter) && name.Length < MostNameLength) name.Append(letter);
        }
        return name.ToString().Trim();
    }
}
