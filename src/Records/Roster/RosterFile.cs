using Slantwise.Records.Csv;

namespace Slantwise.Records.Roster;

/// <summary>A file of a roster: its name and its text.</summary>
/// <param name="Name">The file's name, with or without folders; the names of the OneRoster set tell which table it is.</param>
/// <param name="Text">The whole text.</param>
public sealed record RosterFile(string Name, string Text)
{
    /// <summary>Whether the encoding had to be guessed; a finding says so.</summary>
    public bool IsGuessed { get; init; }

    /// <summary>A roster file from the bytes of a file.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="bytes">The whole file: UTF-8 with or without a mark, UTF-16 with one, else Windows-1252.</param>
    public static RosterFile Read(string name, ReadOnlySpan<byte> bytes)
    {
        var decoded = DecodedText.Read(bytes);
        return new RosterFile(name, decoded.Text) { IsGuessed = decoded.IsGuessed };
    }
}
