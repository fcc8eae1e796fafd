using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Slantwise.Engines.Tests.Rules;

public sealed partial class DocsTests
{
    [Fact]
    public void Decisions_ByNumber_HaveNoGapAndTellWhatWouldOverturnThem()
    {
        var pages = Sources.Files(["docs/decisions"], "*.md").ToList();
        Assert.Equal(Enumerable.Range(1, pages.Count).Select(i => $"{i:0000}"), pages.Select(p => Path.GetFileName(p.Path)[..4]));
        Sources.None(pages.Where(p => !p.Text.Contains("## Why") || !p.Text.Contains("## What would overturn it")).Select(p => p.Path),
            "A decision says why, and what would overturn it:");
    }

    [Fact]
    public void CodeInDocs_EachLine_OccursInATest()
    {
        var tests = string.Join('\n', Sources.Code("tests").Where(f => !f.Path.Contains("/Rules/")).Select(f => Squeezed(f.Text)));
        Sources.None(
            from file in Sources.Files(["docs"], "*.md").Append(("README.md", ReadmeText()))
            from Match block in CodeBlock().Matches(file.Item2)
            from line in block.Groups[1].Value.Split('\n').Select(Squeezed)
            where line.Length > 0 && !line.StartsWith("//") && !tests.Contains(line)
            select $"{file.Item1}: {line}",
            "C# shown in the docs is compiled in a test:");
    }

    [Fact]
    public void Links_InDocs_LeadToFiles() => Sources.None(
        from file in Sources.Files(["docs"], "*.md").Append(("README.md", ReadmeText()))
        from Match link in Link().Matches(file.Item2)
        let target = link.Groups[1].Value.Split('#')[0]
        where target.Length > 0 && !target.Contains("://")
        let full = Path.GetFullPath(Path.Combine(Sources.Root, Path.GetDirectoryName(file.Item1)!, target))
        where !File.Exists(full) && !Directory.Exists(full)
        select $"{file.Item1} -> {target}",
        "A link in the docs leads somewhere:");

    [Fact]
    public void Resources_InSpanish_HaveTheSameKeysAndGapsAsInEnglish()
    {
        var english = Sources.Files(["src"], "*.resx").Where(f => !f.Path.EndsWith(".es.resx")).ToList();
        var spanish = Sources.Files(["src"], "*.es.resx").ToDictionary(f => f.Path, f => Words(f.Text));
        Assert.NotEmpty(english);
        Assert.Equal(english.Count, spanish.Count);
        foreach (var file in english)
        {
            var (en, es) = (Words(file.Text), spanish[file.Path.Replace(".resx", ".es.resx")]);
            Sources.None(en.Keys.Except(es.Keys), $"{file.Path}: keys without Spanish:");
            Sources.None(es.Keys.Except(en.Keys), $"{file.Path}: keys without English:");
            Sources.None(en.Keys.Where(k => !Gaps(en[k]).SetEquals(Gaps(es[k]))), $"{file.Path}: different gaps in Spanish:");
            Sources.None(es.Where(w => string.IsNullOrWhiteSpace(w.Value)).Select(w => w.Key), $"{file.Path}: empty in Spanish:");
        }
    }

    private static string ReadmeText() => File.ReadAllText(Path.Combine(Sources.Root, "README.md"));

    private static string Squeezed(string text) => Spaces().Replace(text, " ").Trim();

    private static Dictionary<string, string> Words(string resx) => XDocument.Parse(resx).Descendants("data")
        .ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value);

    private static HashSet<string> Gaps(string sentence) => Gap().Matches(sentence).Select(m => m.Groups[1].Value).ToHashSet();

    [GeneratedRegex(@"```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"\{(\d+)[^}]*\}")]
    private static partial Regex Gap();
}
