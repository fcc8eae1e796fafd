using System.Collections;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;
using Slantwise.Desk.Words;

namespace Slantwise.Surface.Tests.Desk.Policies;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class PolicyWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePages_HasWordsInBothLanguagesAndNoneIsLeftOver()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var desk = Path.Combine(folder.FullName, "src", "Desk");
        var used = new[] { "Pages/Policies", "Pages/Classes", "Words" }.SelectMany(f => Directory.EnumerateFiles(Path.Combine(desk, f)))
            .Where(f => !f.EndsWith(".resx", StringComparison.Ordinal)).Select(File.ReadAllText)
            .SelectMany(text => Call().Matches(text).SelectMany(call => Literal().Matches(call.Groups["first"].Value))).Select(m => m.Groups["key"].Value)
            .Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.True(used.Count > 30, $"Only {used.Count} keys were found: the pages are no longer read.");
        foreach (var language in new[] { CultureInfo.InvariantCulture, CultureInfo.GetCultureInfo("es") })
        {
            var keys = new ResourceManager(typeof(PolicyWords)).GetResourceSet(language, createIfNotExists: true, tryParents: false)!.Cast<DictionaryEntry>().Select(e => (string)e.Key);
            Assert.Equal(used, keys.Order(StringComparer.Ordinal));
        }
    }

    [GeneratedRegex(@"\b(?:P|PolicyWords)\.Say\((?<first>[^,()]*)")]
    private static partial Regex Call();

    [GeneratedRegex(@"""(?<key>[A-Z][A-Za-z]+)""")]
    private static partial Regex Literal();
}
