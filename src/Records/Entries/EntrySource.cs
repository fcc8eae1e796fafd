namespace Slantwise.Records.Entries;

/// <summary>Where an entry came from.</summary>
public enum EntrySource
{
    /// <summary>Typed by the teacher at the desk.</summary>
    Desk = 1,

    /// <summary>Read from a photographed or scanned sheet.</summary>
    Paper = 2,

    /// <summary>Made on a tablet or phone in the lesson.</summary>
    Floor = 3,

    /// <summary>Added from a file.</summary>
    File = 4,
}
