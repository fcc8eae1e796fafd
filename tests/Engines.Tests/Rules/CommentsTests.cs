using System.Text.RegularExpressions;

namespace Slantwise.Engines.Tests.Rules;

public sealed partial class CommentsTests
{
    [Fact]
    public void SourceKeys_InCodeAndReferences_AreTheSame()
    {
        var listed = ListedKey().Matches(File.ReadAllText(Path.Combine(Sources.Root, "docs/references.md")))
            .Select(m => m.Groups[1].Value).ToHashSet();
        var named = (
            from file in Sources.Code("src", "tests", "bench").Concat(Sources.Files(["docs", "references"], "*.md").Where(f => f.Path != "docs/references.md"))
            from Match line in SourceLine().Matches(file.Text)
            from Match key in Key().Matches(line.Value)
            select (Key: key.Groups[1].Value, file.Path)).ToList();
        Sources.None(named.Where(n => !listed.Contains(n.Key)).Select(n => $"[{n.Key}] in {n.Path}").Distinct(),
            "A source that a comment names stands in docs/references.md:");
        Sources.None(listed.Except(named.Select(n => n.Key)), "A source in docs/references.md is named by some comment:");
    }

    [Fact]
    public void Todo_InCode_CarriesAnIssueNumber() => Sources.None(
        from file in Sources.Code("src", "tests", "bench")
        where !file.Path.EndsWith("CommentsTests.cs")
        from Match todo in Todo().Matches(file.Text)
        select $"{file.Path}: {todo.Value.Trim()}",
        "No TODO without an issue number:");

    [Fact]
    public void CatchAll_InTheSource_StandsInOnePlaceAFace()
    {
        var counts = Sources.Code("src").Concat(Sources.Files(["src"], "*.razor"))
            .Select(f => (Room: f.Path.Split('/')[1], Count: Regex.Count(f.Text, @"catch\s*\(Exception\b(?![^)]*\)\s*when)")))
            .GroupBy(f => f.Room, (room, files) => (Room: room, Count: files.Sum(f => f.Count)));
        foreach (var (room, count) in counts)
            Assert.True(count <= (room is "Host" or "Desk" or "Floor" ? 1 : 0),
                $"{room} has {count} catch-alls: failure becomes words in one place per face, nowhere else.");
    }

    [Fact]
    public void Repository_EveryTextFile_NamesNoMachine() => Sources.None(
        from file in Sources.Files(["src", "tests", "docs", "content", "bench", "references", ".ci"], "*.*")
        where !file.Path.EndsWith("CommentsTests.cs") && MachinePath().IsMatch(file.Text)
        select $"{file.Path}: {MachinePath().Match(file.Text).Value}",
        "No path of a machine in the repository:");

    [GeneratedRegex(@"(?:Sources?:|source:).*")]
    private static partial Regex SourceLine();

    [GeneratedRegex(@"\[([A-Z][A-Za-z]*\d{2,5}[a-z]?)\]")]
    private static partial Regex Key();

    [GeneratedRegex(@"^- \*\*\[([^\]]+)\]\*\*", RegexOptions.Multiline)]
    private static partial Regex ListedKey();

    [GeneratedRegex(@"//.*\bTODO\b(?!.*#\d).*")]
    private static partial Regex Todo();

    [GeneratedRegex(@"/work/|/home/[a-z]|/root/|C:\\Users")]
    private static partial Regex MachinePath();
}
