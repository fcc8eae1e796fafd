using Slantwise.Host.Floor;

namespace Slantwise.Host.Sync;

/// <summary>Which floor pages this program has.</summary>
internal static class FloorVersion
{
    /// <summary>What the pages' build says of its sources: a device compares its own with it.</summary>
    public static string Text => FloorPages.Version;
}
