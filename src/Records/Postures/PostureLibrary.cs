using System.Text;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures;

/// <summary>The postures that come with the program. They are inside it, so no folder has to be found.</summary>
public static class PostureLibrary
{
    private const string Folder = "content/postures/";

    private static readonly Lazy<IReadOnlyDictionary<string, Posture>> ByKey = new(() => Texts()
        .Select(file => PostureText.Read(file.Value).Posture ?? throw new InvalidDataException($"The posture {file.Key} that comes with the program cannot be read."))
        .ToDictionary(posture => posture.Key, StringComparer.Ordinal));

    /// <summary>Every posture, by family and then by key.</summary>
    public static IReadOnlyList<Posture> All { get; } = [.. ByKey.Value.Values.OrderBy(p => p.Group).ThenBy(p => p.Key, StringComparer.Ordinal)];

    /// <summary>A posture by its key; none where the library has no such posture.</summary>
    /// <param name="key">As in a level or an address.</param>
    public static Posture? Find(string key) => ByKey.Value.GetValueOrDefault(key);

    /// <summary>The library's files: name and text, by name.</summary>
    public static IReadOnlyDictionary<string, string> Texts()
    {
        var texts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var resource in typeof(PostureLibrary).Assembly.GetManifestResourceNames().Where(name => name.StartsWith(Folder, StringComparison.Ordinal)))
        {
            using var stream = typeof(PostureLibrary).Assembly.GetManifestResourceStream(resource)!;
            using var reader = new StreamReader(stream, Encoding.UTF8);
            texts[resource[Folder.Length..]] = reader.ReadToEnd();
        }
        return texts;
    }
}
