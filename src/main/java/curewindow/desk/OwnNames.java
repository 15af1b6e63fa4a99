package curewindow.desk;

import curewindow.site.LocalServer;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** By which names and addresses this machine is called. */
final class OwnNames {

  private OwnNames() {}

  /** All of them in lower case; of a machine that only answers itself, those of the loopback. */
  static Set<String> all(boolean open) {
    Set<String> names = new TreeSet<>(LocalServer.LOOPBACK);
    if (open) {
      names.addAll(inNetwork());
      try {
        String host = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
        names.add(host);
        names.add(host + ".local");
      } catch (UnknownHostException e) {
        // It goes by its addresses then.
      }
    }
    return names;
  }

  /** The addresses (IPv4) by which other machines of the network reach this one. */
  static List<String> inNetwork() {
    List<String> addresses = new ArrayList<>();
    try {
      for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        for (InetAddress address : Collections.list(card.getInetAddresses())) {
          if (address instanceof Inet4Address && !address.isLoopbackAddress()) {
            addresses.add(address.getHostAddress());
          }
        }
      }
    } catch (SocketException e) {
      // Without a network there is nobody to tell an address.
    }
    return addresses;
  }
}
