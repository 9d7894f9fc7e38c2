using ClimateLens.Nursery.Channels;

namespace ClimateLens.Nursery.Tests.Channels;

public class ChannelCatalogueTests
{
    public static TheoryData<string> Names => [.. ChannelCatalogue.All.Select(c => c.Name)];

    [Fact]
    public void Channels_All_HaveDistinctNamesAndLabels()
    {
        Assert.Equal(ChannelCatalogue.All.Count, ChannelCatalogue.All.Select(c => c.Name.ToUpperInvariant()).Distinct().Count());
        Assert.Equal(ChannelCatalogue.All.Count, ChannelCatalogue.All.Select(c => c.Label.ToUpperInvariant()).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Channel_Limits_FailEncloseSuspect(string name)
    {
        Channel channel = ChannelCatalogue.Get(name);
        Assert.True(channel.FailLow <= channel.SuspectLow, "low");
        Assert.True(channel.SuspectLow < channel.SuspectHigh, "suspect");
        Assert.True(channel.SuspectHigh <= channel.FailHigh, "high");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Channel_Name_IsCamelCaseAndFitsAColumnName(string name)
        => Assert.Matches("^[a-z]+([A-Z][a-z]*)*$", name);

    [Theory]
    [MemberData(nameof(Names))]
    public void Channel_Numbers_AreAboveZeroWhereGiven(string name)
    {
        Channel channel = ChannelCatalogue.Get(name);
        Assert.False(channel.SpikeLimit <= 0);
        Assert.False(channel.FlatHours <= 0);
        Assert.False(channel.DefaultAccuracy <= 0);
        Assert.True(channel.FlatTolerance >= 0);
        Assert.Equal(double.IsNaN(channel.FlatHours), channel.FlatTolerance == 0);
        Assert.NotEmpty(channel.Source);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Channel_OfSwitchesAndShares_HasTheLimitsOfItsQuantity(string name)
    {
        Channel channel = ChannelCatalogue.Get(name);
        double? most = channel.Quantity switch { Quantity.OnOff => 1, Quantity.Percent => 100, Quantity.Angle => 360, _ => null };
        Assert.True(most is null || (channel.FailLow == 0 && channel.FailHigh == most), $"{channel.FailLow} to {channel.FailHigh}");
    }

    [Fact]
    public void WeatherLimits_FailRange_HoldsTheRecordsOfTheWorld()
    {
        // World Meteorological Organization, World Weather and Climate Extremes Archive (from memory): air 56.7 °C
        // (Furnace Creek, 1913); -89.2 °C (Vostok) is outside, where no nursery stands; pressure 108.33 kPa reduced to
        // sea level (Agata, 1968) and 87.0 kPa (typhoon Tip, 1979).
        Channel outside = ChannelCatalogue.Get("outsideTemperature");
        Channel pressure = ChannelCatalogue.Get("airPressure");
        Assert.InRange(56.7, outside.FailLow, outside.FailHigh);
        Assert.InRange(108.33, pressure.FailLow, pressure.FailHigh);
        Assert.InRange(87.0, pressure.FailLow, pressure.FailHigh);
    }

    [Theory]
    [InlineData("AirTemperature")]
    [InlineData("")]
    [InlineData("nursery")]
    public void Channel_UnknownName_IsNotFound(string name)
    {
        Assert.False(ChannelCatalogue.TryGet(name, out _));
        Assert.Throws<KeyNotFoundException>(() => ChannelCatalogue.Get(name));
    }
}
