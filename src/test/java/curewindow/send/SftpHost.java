package curewindow.send;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.PublicKey;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.sshd.common.config.keys.KeyUtils;
import org.apache.sshd.common.digest.BuiltinDigests;
import org.apache.sshd.common.file.virtualfs.VirtualFileSystemFactory;
import org.apache.sshd.common.keyprovider.KeyPairProvider;
import org.apache.sshd.server.SshServer;
import org.apache.sshd.server.session.ServerSession;
import org.apache.sshd.sftp.server.FileHandle;
import org.apache.sshd.sftp.server.SftpEventListener;
import org.apache.sshd.sftp.server.SftpSubsystemFactory;

/** A real SFTP server on this machine, which can break off in the middle of its work. */
final class SftpHost implements AutoCloseable {

  static final String USER = "quillhaven";
  static final String PASSWORD = "mist & rain";

  private final SshServer server = SshServer.setUpDefaultServer();
  private final AtomicInteger left = new AtomicInteger(Integer.MAX_VALUE);
  private final String fingerprint;

  SftpHost(Path root, KeyPair key, List<PublicKey> users) throws IOException {
    fingerprint = KeyUtils.getFingerPrint(BuiltinDigests.sha256, key.getPublic());
    server.setHost(InetAddress.getLoopbackAddress().getHostAddress());
    server.setPort(0);
    server.setKeyPairProvider(KeyPairProvider.wrap(key));
    server.setPasswordAuthenticator(
        (user, password, session) -> user.equals(USER) && password.equals(PASSWORD));
    server.setPublickeyAuthenticator(
        (user, shown, session) -> users.stream().anyMatch(k -> KeyUtils.compareKeys(k, shown)));
    server.setFileSystemFactory(new VirtualFileSystemFactory(root));
    SftpSubsystemFactory sftp = new SftpSubsystemFactory();
    sftp.addSftpEventListener(
        new SftpEventListener() {
          @Override
          public void writing(
              ServerSession session,
              String handle,
              FileHandle file,
              long offset,
              byte[] data,
              int dataOffset,
              int length)
              throws IOException {
            if (left.decrementAndGet() < 0) {
              session.close(true);
              throw new IOException("the line is cut");
            }
          }
        });
    server.setSubsystemFactories(List.of(sftp));
    server.start();
  }

  /** Breaks off at so many writes from now on. */
  void cutAfter(int writes) {
    left.set(writes);
  }

  int port() {
    return server.getPort();
  }

  /** As OpenSSH writes it. */
  String fingerprint() {
    return fingerprint;
  }

  void stop() throws IOException {
    server.stop(true);
  }

  @Override
  public void close() throws IOException {
    stop();
  }
}
