using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Records.Words;

namespace Slantwise.Records.Postures.Figures.Descriptions;

/// <summary>Names parts of the body in a list: "both hands and the crown of the head".</summary>
internal static class DescribedParts
{
    public static string List(IReadOnlyList<Contact> contacts, CultureInfo culture)
    {
        var names = contacts.GroupBy(c => c.Part).SelectMany(part => part.Select(c => c.Side).Distinct().Count() == 2
            ? [PostureWords.Text($"Part{part.Key}Both", culture)]
            : part.Select(c => PostureWords.Text($"Part{c.Part}{c.Side}", culture)).Distinct()).ToArray();
        return Enumerate(names, culture);
    }

    public static string Enumerate(string[] names, CultureInfo culture) =>
        names.Length == 1 ? names[0] : PostureWords.Text("And", culture, string.Join(", ", names[..^1]), names[^1]);
}
