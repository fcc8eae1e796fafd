using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Slantwise.Engines.Tests.Rules;

public sealed partial class TestNamesTests
{
    [Fact]
    public void Tests_ByName_SayMethodStateOutcome() => Sources.None(
        from file in Sources.Code("tests")
        from method in Sources.Syntax(file.Text).DescendantNodes().OfType<MethodDeclarationSyntax>()
        where method.AttributeLists.SelectMany(l => l.Attributes).Any(a => a.Name.ToString() is "Fact" or "Theory")
        where !Name().IsMatch(method.Identifier.Text)
        select $"{file.Path}: {method.Identifier.Text}",
        "A test is named Method_State_Outcome:");

    [Fact]
    public void Tests_ByContent_TakeNoTime() => Sources.None(
        from file in Sources.Code("tests")
        where !file.Path.Contains("/Rules/") && TimedAssertion().IsMatch(file.Text)
        select file.Path,
        "No timed assertions in tests; measurements live in bench/:");

    [GeneratedRegex("^[A-Z][A-Za-z0-9]*_[A-Z0-9][A-Za-z0-9]*_[A-Z0-9][A-Za-z0-9]*$")]
    private static partial Regex Name();

    [GeneratedRegex(@"Assert\.[A-Za-z]+\([^;]*\bElapsed")]
    private static partial Regex TimedAssertion();
}
