namespace Slantwise.Storage;

/// <summary>Files with children's records: readable by the user who runs the program and by nobody else of the machine.</summary>
internal static class OwnersFile
{
    /// <summary>Makes an empty file; one that is there already stays as it is.</summary>
    /// <remarks>On Windows a file has the rights of its folder. SQLite gives its companion files the rights of the database.</remarks>
    public static void Make(string file)
    {
        if (File.Exists(file)) return;
        var options = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.Write, Share = FileShare.ReadWrite };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var made = new FileStream(file, options);
    }
}
