using System.Globalization;
using Slantwise.Bench.Accuracy;
using Slantwise.Surface.Tests.Marks;
using Slantwise.Surface.Tests.Marks.Photos.Faults;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["pictures", var file, var first, var count]:
        ContactSheet.Write(file, [.. AllFaults.InOrder.Skip(int.Parse(first)).Take(int.Parse(count))], 101);
        return 0;
    case ["picture", var file, var seed, var name, var severity, var hand]:
        var page = SimulatedPage.Of(
            ulong.Parse(seed), AllFaults.InOrder.First(f => f.Name == name), Enum.Parse<Severity>(severity), Enum.Parse<Severity>(hand));
        ContactSheet.WriteOne(file, page.Image);
        return 0;
    default:
        Console.Error.WriteLine("pictures FILE FIRST COUNT | picture FILE SEED FAULT SEVERITY HAND");
        return 2;
}
