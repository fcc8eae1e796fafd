using System.CommandLine;
using Slantwise.Host.Answers;

namespace Slantwise.Host;

/// <summary>The folder where one installation keeps everything.</summary>
internal sealed class DataFolder
{
    private const UnixFileMode OwnerFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode OwnerFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private DataFolder(string path) => FullPath = path;

    public string FullPath { get; }

    /// <summary>The embedded database.</summary>
    public string DatabaseFile => Path.Combine(FullPath, "slantwise.db");

    /// <summary>The keys that sign the desk's forms.</summary>
    public string KeysFolder => Path.Combine(FullPath, "keys");

    /// <summary>Whether there is a database in it.</summary>
    public bool HasDatabase => File.Exists(DatabaseFile);

    /// <summary>The folder asked for by option, else by <c>SLANTWISE_DATA</c>, else the user's own. It is not made yet.</summary>
    public static DataFolder Of(ParseResult parsed, GlobalOptions options)
    {
        var asked = parsed.GetValue(options.Data) ?? Environment.GetEnvironmentVariable("SLANTWISE_DATA");
        if (!string.IsNullOrWhiteSpace(asked)) return new DataFolder(Path.GetFullPath(asked));
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return new DataFolder(Path.Combine(own, "slantwise"));
    }

    /// <summary>Makes the folder, for its owner's eyes only; one that is there stays as it is.</summary>
    public void Make()
    {
        if (File.Exists(FullPath)) throw Refusal.Of("DataIsAFile", FullPath);
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(FullPath);
        else Directory.CreateDirectory(FullPath, OwnerFolder);
    }

    /// <summary>Makes an empty database file readable by its owner only, also in a folder that others may look into. SQLite's own files beside it follow it.</summary>
    public void MakeDatabaseFile()
    {
        Make();
        if (OperatingSystem.IsWindows() || HasDatabase) return;
        using var file = new FileStream(DatabaseFile, new FileStreamOptions
        {
            Mode = FileMode.OpenOrCreate,
            Access = FileAccess.Write,
            Share = FileShare.ReadWrite,
            UnixCreateMode = OwnerFile,
        });
    }

    /// <summary>Takes the folder for one program that must be alone in it; given back when it is disposed, or when the program dies.</summary>
    public IDisposable Lock()
    {
        Make();
        try
        {
            return new FileStream(Path.Combine(FullPath, "slantwise.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException)
        {
            throw new Refusal(Words.HostWords.Say("DataInUse", FullPath), Refusal.NotPossible);
        }
    }
}
