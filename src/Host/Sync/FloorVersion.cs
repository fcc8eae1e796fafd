using System.Reflection;

namespace Slantwise.Host.Sync;

/// <summary>Which floor pages this program has.</summary>
internal static class FloorVersion
{
    /// <summary>The program's version: its pages are built with it.</summary>
    public static string Text { get; } =
        typeof(FloorVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";
}
