package curewindow.send;

import com.jcraft.jsch.ChannelSftp;
import com.jcraft.jsch.JSch;
import com.jcraft.jsch.JSchException;
import com.jcraft.jsch.Session;
import com.jcraft.jsch.SftpException;
import curewindow.shop.SendTo;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * A folder on a host, over SFTP (draft-ietf-secsh-filexfer-02, version 3, as OpenSSH speaks it). A
 * file gets its name when it is whole. Only the host whose key shop.yaml names is spoken to;
 * nothing of the user's own SSH configuration, keys and agents is used.
 */
final class SftpDestination implements Destination {

  private static final int USUAL_PORT = 22;
  private static final int PATIENCE = (int) Duration.ofSeconds(30).toMillis();
  private static final String HOME = "/~/";

  private final Session session;
  private final ChannelSftp sftp;
  private final String root;
  private final Set<String> folders = new HashSet<>();

  private SftpDestination(Session session, ChannelSftp sftp, String root) {
    this.session = session;
    this.sftp = sftp;
    this.root = root;
  }

  /**
   * Logs in.
   *
   * @param to the folder on the host
   * @param login the secrets
   * @throws IOException where the host cannot be reached, is another one, does not let the program
   *     in or has no such folder; the message is for the user
   */
  static SftpDestination open(SendTo to, Login login) throws IOException {
    KnownHost host = new KnownHost(to.hostKey());
    Session session = session(to, login, host);
    try {
      ChannelSftp sftp = (ChannelSftp) session.openChannel("sftp");
      sftp.connect(PATIENCE);
      SftpDestination destination = new SftpDestination(session, sftp, root(to.to()));
      if (!destination.isFolder(destination.root)) {
        throw new SendTrouble(
            SendTrouble.Kind.NO_FOLDER,
            Map.of("host", to.to().getHost(), "folder", destination.root),
            "%s has no folder %s; make it there, or mend send in shop.yaml"
                .formatted(to.to().getHost(), destination.root),
            null);
      }
      return destination;
    } catch (JSchException e) {
      session.disconnect();
      throw new IOException(to.to().getHost() + " has no SFTP (" + e.getMessage() + ")", e);
    } catch (IOException e) {
      session.disconnect();
      throw e;
    }
  }

  private static String root(URI to) {
    String path = to.getPath().replaceAll("/+$", "") + "/";
    String root = path.startsWith(HOME) ? "./" + path.substring(HOME.length()) : path;
    return root.substring(0, root.length() - 1);
  }

  private static Session session(SendTo to, Login login, KnownHost host) throws IOException {
    URI uri = to.to();
    JSch jsch = new JSch();
    jsch.setHostKeyRepository(host);
    if (to.keyFile().isPresent()) {
      addKey(jsch, to.keyFile().get(), login);
    }
    try {
      int port = uri.getPort() < 0 ? USUAL_PORT : uri.getPort();
      Session session = jsch.getSession(uri.getUserInfo(), uri.getHost(), port);
      login
          .password()
          .map(word -> word.getBytes(StandardCharsets.UTF_8))
          .ifPresent(session::setPassword);
      session.setConfig("StrictHostKeyChecking", "yes");
      session.setConfig("PreferredAuthentications", "publickey,password,keyboard-interactive");
      session.setServerAliveInterval(PATIENCE);
      session.setTimeout(PATIENCE);
      session.connect(PATIENCE);
      return session;
    } catch (JSchException e) {
      throw notConnected(uri, host, e);
    }
  }

  private static IOException notConnected(URI uri, KnownHost host, JSchException e) {
    String name = uri.getHost();
    if (host.isOther()) {
      return host.refusal(name, e);
    }
    return host.isKnown()
        ? new SendTrouble(
            SendTrouble.Kind.NOT_LET_IN,
            Map.of("host", name, "user", uri.getUserInfo()),
            "%s does not let %s in (%s); name a key-file under send in shop.yaml, or put the password into %s"
                .formatted(name, uri.getUserInfo(), e.getMessage(), Login.PASSWORD),
            e)
        : new SendTrouble(
            SendTrouble.Kind.NOT_REACHED,
            Map.of("host", name),
            name + " cannot be reached (" + e.getMessage() + ")",
            e);
  }

  private static void addKey(JSch jsch, Path file, Login login) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IOException(file + " is not there; mend key-file under send in shop.yaml");
    }
    if (isOpenToOthers(file)) {
      throw new IOException(file + " can be read by others; close it to them: chmod 600 " + file);
    }
    try {
      if (login.passphrase().isPresent()) {
        jsch.addIdentity(
            file.toString(), login.passphrase().get().getBytes(StandardCharsets.UTF_8));
      } else {
        jsch.addIdentity(file.toString());
      }
    } catch (JSchException e) {
      throw new IOException(file + " cannot be used as a key (" + e.getMessage() + ")", e);
    }
    if (jsch.getIdentityRepository().getIdentities().stream().anyMatch(i -> i.isEncrypted())) {
      throw new IOException(
          file + " is locked; put its passphrase into the environment as " + Login.PASSPHRASE);
    }
  }

  private static boolean isOpenToOthers(Path file) throws IOException {
    if (!file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      return false;
    }
    Set<PosixFilePermission> rights = Files.getPosixFilePermissions(file);
    return rights.contains(PosixFilePermission.GROUP_READ)
        || rights.contains(PosixFilePermission.OTHERS_READ);
  }

  /** What the library throws is no fault of reading or writing to Java. */
  private interface Step {
    void take() throws SftpException;
  }

  private static void step(Step step) throws IOException {
    try {
      step.take();
    } catch (SftpException e) {
      throw new IOException(e.getMessage() == null ? e.toString() : e.getMessage(), e);
    }
  }

  /** Where something may be refused because it is not there, or not empty. */
  private boolean done(Step step) throws IOException {
    try {
      step.take();
      return true;
    } catch (SftpException e) {
      if (!session.isConnected() || sftp.isClosed()) {
        throw new IOException("the host broke off", e);
      }
      return false;
    }
  }

  private boolean isFolder(String path) throws IOException {
    return done(() -> sftp.ls(path, entry -> ChannelSftp.LsEntrySelector.BREAK));
  }

  @Override
  public void put(String path, byte[] bytes) throws IOException {
    int slash = path.lastIndexOf('/');
    makeFolder(slash < 0 ? "" : path.substring(0, slash));
    String file = root + "/" + path;
    String half = half(path);
    step(() -> sftp.put(new ByteArrayInputStream(bytes), half, ChannelSftp.OVERWRITE));
    if (!done(() -> sftp.rename(half, file))) {
      // A host that cannot replace a file in one step.
      done(() -> sftp.rm(file));
      step(() -> sftp.rename(half, file));
    }
  }

  /** The name of a file until it is whole. */
  private String half(String path) {
    int name = path.lastIndexOf('/') + 1;
    return root + "/" + path.substring(0, name) + ".half-" + path.substring(name);
  }

  private void makeFolder(String folder) throws IOException {
    if (folder.isEmpty() || folders.contains(folder)) {
      return;
    }
    int slash = folder.lastIndexOf('/');
    makeFolder(slash < 0 ? "" : folder.substring(0, slash));
    String path = root + "/" + folder;
    if (!isFolder(path)) {
      step(() -> sftp.mkdir(path));
    }
    folders.add(folder);
  }

  @Override
  public void remove(String path) throws IOException {
    String file = root + "/" + path;
    if (!done(() -> sftp.rm(file)) && done(() -> sftp.lstat(file))) {
      throw new IOException(file + " cannot be taken away");
    }
    done(() -> sftp.rm(half(path)));
    boolean isEmpty = true;
    for (int at = path.lastIndexOf('/'); at > 0 && isEmpty; at = path.lastIndexOf('/', at - 1)) {
      String folder = root + "/" + path.substring(0, at);
      isEmpty = done(() -> sftp.rmdir(folder));
      folders.clear();
    }
  }

  @Override
  public void close() {
    sftp.disconnect();
    session.disconnect();
  }
}
